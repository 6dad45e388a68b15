package plan

// Kind is what happens in a step.
type Kind uint8

// The kinds of step. Those that are not a job's own, Rinse, Mix and Walk, come before the spraying they are for.
const (
	PrepStep Kind = iota + 1
	Rinse         // of a gun
	Mix           // of a cup
	Walk          // into the booth, and the wait after the door
	Spray         // of a coat
	Flash         // the wait after a coat
	Heat          // a bake
	Work          // of a machine, in a job shop
)

// Step is one line of a plan.
type Step struct {
	Kind       Kind
	Job, Coat  int // whose; of Rinse, Mix and Walk the coat they are for
	Product    int // at Rinse, Mix, Walk and Spray what goes into the gun; -1 for none
	Cup        int // at Mix, Walk and Spray; 0 for none
	Painter    int // 0 for none
	Place      int // number of booth, bay, oven or machine; 0 for none
	Start, End int
	Latest     int  // starting later would break a rule or a kept promise, or make the day longer; -1 where nothing is said
	Done       bool // it is done or under way
}

// Cup is one mix.
type Cup struct {
	Product, Painter int
	Mixed            int // when mixing starts
	UseBy            int // the end of its pot life; -1 for no limit
	LastOut          int // the end of the last spraying out of it
	Amount           int // mL to spray; what is lost in the cup comes on top
	Coats            []Ref
	Jobs             int // how many jobs it serves
	Saves            int // minutes of mixing and walking that other jobs are spared by sharing it
	Done             bool
	Gone             bool // nothing is left of it
}

// JobEnd is when a job is done, and by how much that is late.
type JobEnd struct{ Done, Late int }

// Plan is an order of the day with its times.
type Plan struct {
	Steps    []Step // in the order of starts
	Jobs     []JobEnd
	Cups     []Cup // Step.Cup counts them from 1
	Finish   int   // when the last job is done
	Late     int   // minutes late, each times the job's priority
	Rinses   int
	Rinsing  int // minutes of it
	Trips    int // walks into a booth
	LeftOver int // mL
	Cost     int // by the aim
}

// Bound is what no plan beats.
type Bound struct {
	Cost   int // no plan costs less
	Finish int // no plan ends sooner, whatever its cost
}
