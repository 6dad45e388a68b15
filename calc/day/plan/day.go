// Package plan orders the jobs of a day through booth, prep bay and oven: what to spray when, when to mix each cup and
// rinse each gun, when each job is done.
//
// Everything is whole minutes, from a midnight or any other beginning. Numbers that name something (painter, booth, cup)
// count from 1, and 0 stands for none or for any; jobs, coats and products are indexes from 0.
//
//	s, faults := plan.New(day, 1)
//	if len(faults) > 0 { ... }           // what cannot be met, and the least change that would
//	for !s.Proven() && s.Improve(20000) { show(s.Best(), s.Bound()) }
//
// Never broken: least flash, latest recoat, pot life, one thing at a time, breaks, ready-from. Promised times are what
// a plan is judged by. The same day, seed and number of evaluations give the same plan on every machine.
package plan

// Day is all that a plan is made from.
type Day struct {
	Jobs     []Job
	Products []Product // colours and other products, each with a gun to be rinsed between them

	Painters, Booths, PrepBays, Ovens int // 0 stands for one
	Room                              int // how many jobs may stand wet in one booth; 0 for any number

	Rinse        [][]int // minutes from the product of the row to that of the column; the diagonal is from cup to cup
	Clean        int     // minutes to put a gun down clean, before prep by the painter
	RinseInBooth bool    // a rinse does not take the painter out of the booth
	Walk, Door   int     // minutes to walk in, and after the door has been open until spraying may begin

	ShareCups bool // parts of several jobs in one product may be sprayed out of one cup
	CupHolds  int  // mL; 0 for any amount
	CupLoses  int  // mL left in cup and gun of every mix

	Breaks []Break
	Now    int    // nothing starts sooner, but for what is done
	Done   []Done // what is done or under way
	Pins   []Pin
	Aim    Aim // the zero value stands for PromisesFirst
}

// Product is what a gun is filled with.
type Product struct {
	Mix     int // minutes to mix a cup
	PotLife int // minutes from the start of mixing to the end of the last spraying; 0 for no limit
}

// Job is parts that are sprayed together, coat after coat.
type Job struct {
	Ready    int // when the parts are there
	Promised int // 0 for no promise
	Priority int // how much a minute late weighs against other jobs'; 0 counts as 1
	Prep     Prep
	Coats    []Coat
	Bake     Bake
}

// Prep is what is done in the prep bay before the first coat.
type Prep struct {
	Minutes   int  // 0 for none
	ByPainter bool // it takes a painter, who puts the gun down clean for it
}

// Coat is one coat of a job.
type Coat struct {
	Product int
	Spray   int  // minutes
	Amount  int  // mL; 0 where it is not known
	Flash   int  // least minutes from its end to the start of the next coat or bake, or until the job is done
	Latest  int  // most minutes from its end to the start of the next coat or bake; 0 for no limit
	NewCup  bool // it does not come out of the cup of the coat before, though that is of the same product
	Movable bool // after its flash the parts may leave the booth before the next coat
}

// Bake is heat after the last coat.
type Bake struct {
	Minutes int  // 0 for none
	InOven  bool // in an oven or bake bay of its own; else in the booth, and everything wet in there joins or is out
	Heat    int  // bakes join only at equal heat and minutes; any number will do to tell them apart
}

// Break is a time in which a painter does no work. Flash and bake go on.
type Break struct {
	From, To int
	Painter  int // 0 for all
}

// Ref names a step of a job.
type Ref struct {
	Job  int
	Kind Kind // Prep, Spray or Heat
	Coat int  // at Spray
}

// Done is a step that is done or under way. The steps of a job are given from its first on.
type Done struct {
	Ref
	Start, End int
	Painter    int  // 0 counts as 1, as in Place
	Place      int  // number of the booth, bay or oven
	Cup        int  // at Spray: coats of one number came out of one cup; 0 where the job had the cup for itself
	Mixed      int  // at Spray: when mixing of the cup began; 0 for just before its first coat
	Gone       bool // at Spray: what was left in the cup is spilt, gelled or thrown away
}

// Pin holds a step to come at a time, a painter or a place; what is 0 is left open.
type Pin struct {
	Ref
	Start, Painter, Place int
}

// Aim is what a plan costs, in points: the best plan has fewest. All are 0 or above.
type Aim struct {
	Late     int // a minute late, times the job's priority
	Finish   int // a minute until the last job is done
	Rinse    int // a rinse, beside its minutes
	Trip     int // a walk into a booth, beside its minutes
	Cup      int // a cup mixed, beside its minutes
	LeftOver int // 100 mL left over
}

// PromisesFirst keeps promises before anything else, then ends early, then saves rinses, walks, cups and paint.
func PromisesFirst() Aim { return Aim{Late: 1000, Finish: 10, Rinse: 3, Trip: 2, Cup: 2, LeftOver: 2} }

// HomeEarly weighs a minute late like two minutes of a longer day.
func HomeEarly() Aim { return Aim{Late: 20, Finish: 10, Rinse: 3, Trip: 2, Cup: 2, LeftOver: 2} }

// LittleWaste lets the day grow by a quarter of an hour to save a rinse or a cup.
func LittleWaste() Aim {
	return Aim{Late: 1000, Finish: 10, Rinse: 150, Trip: 20, Cup: 150, LeftOver: 150}
}

// FinishOnly looks at nothing but the end of the last job.
func FinishOnly() Aim { return Aim{Finish: 1} }

// RinseTimes are minutes of rinsing by what follows what, from which Matrix makes Day.Rinse.
type RinseTimes struct {
	Same        int // from one cup to the next of the same product
	LightToDark int
	DarkToLight int
	BaseToClear int // to and from a clear coat, or anything else without a shade
}

// Matrix tells the minutes between products, whose shades run from 1 for the lightest upwards; 0 stands for none, as
// in a clear coat.
func (r RinseTimes) Matrix(shades []int) [][]int {
	all := make([][]int, len(shades))
	for i, from := range shades {
		all[i] = make([]int, len(shades))
		for j, to := range shades {
			switch {
			case i == j:
				all[i][j] = r.Same
			case from == 0 || to == 0:
				all[i][j] = r.BaseToClear
			case from > to:
				all[i][j] = r.DarkToLight
			default:
				all[i][j] = r.LightToDark
			}
		}
	}
	return all
}

func count(n int) int { return max(1, n) }
