// A browser compiles what a core does when it is first done. So a small day is planned while nobody waits, with a little
// of everything, and the first plan that somebody waits for is there sooner.
const jobs = [1, 2, 3, 4];

const small = [
  "painters=2&booths=2&ovens=1&cup_size=900&tried=1000&break.1.break_from=9:00&break.1.break_to=9:10",
  ...["Base", "Clear"].map((name, i) => `paint.${i + 1}.product=${name}&paint.${i + 1}.pot_life=60`),
  ...jobs.map((n) => `job.${n}.job_name=${n}&job.${n}.prep_time=5&job.${n}.bake_time=20&job.${n}.promised_by=9:30`),
  ...jobs.flatMap((n) => ["Base", "Clear"].map((name, i) => [`of_job=${n}`, `product=${name}`, "coats=2", "spray_time=5", "coat_amount=200", "flash=10", "recoat_within=60"].map((cell) => `coat.${2 * n + i}.${cell}`).join("&"))),
].join("&");

/** Has a core of the day plan a day that nobody sees. */
export const warm = (core) => core.report("day", small).catch(() => {});
