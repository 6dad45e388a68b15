package browser

import "testing"

// Lessons, the values beside their print, and the page of a course package before the accessibility checker; on the
// narrowest phone with the longer words of Spanish, too.
func TestLessonsAndPackagesAreAccessible(t *testing.T) {
	if testing.Short() {
		t.Skip("LONG=1 looks at these too")
	}
	s := serve(t)
	program := checker(t)
	for _, l := range []look{phone, deskDark} {
		p := open(t, s, "wet-film.html#dry_film=60&coats=2&volume_solids=45&solids_for=mix", l)
		p.waitIn("#card", "67 µm")
		p.openLesson("wet_film")
		p.axe(program, "a lesson")
		p.visit("numbers.html#of-wet-film")
		p.waitUntil("the calculator's values are open", `document.getElementById("of-wet-film")?.closest("details").open === true`)
		p.axe(program, "values beside their print")
	}
	es := open(t, s, "es/wet-film.html#dry_film=60&coats=2&volume_solids=45&solids_for=mix", narrow)
	es.waitIn("#card", "67 µm")
	lesson := es.openLesson("wet_film")
	es.has(lesson, "De húmeda a seca", "Con los números puestos:", "Resultado: 66,667 µm", "Cuando Película seca deseada va de 30 µm a 120 µm, Película húmeda de una capa sube de 33 µm a 133 µm")
	es.fits()
	es.shotWhole("lesson-es")

	maker := open(t, s, "about.html", desk)
	maker.before(savedBytes)
	maker.visit("es/exercise-set.html#" + courseSet + "&q.3.of=condensation")
	maker.waitUntil("the set is read", `document.querySelector("#exercises .preview .task-given") !== null`)
	maker.axe(program, "the trainer's page")
	maker.shotWhole("exercise-set-es")
	data := packageBytes(maker, "scorm")
	p := open(t, servedFrom(t, unzipped(t, data)), "package/index.html", narrow)
	p.waitFor("Aquí no responde ningún curso, así que no se comunica nada.")
	p.waitFor("Película seca deseada")
	p.axe(program, "a package without a course")
	p.tap("#tasks li:nth-child(3) button")
	p.waitUntil("the other core answers too", `document.getElementById("task-number").innerText.includes("3")`)
	p.fits()
}
