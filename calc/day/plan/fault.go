package plan

// Rule names what a day breaks or misses.
type Rule uint8

// The rules. Has is what the day says and Needs the least or most that would do, in minutes unless said otherwise.
const (
	BadNumber       Rule = iota + 1 // a number below 0, or one that names nothing there is; Field says which
	LatestRecoat                    // Coat's latest recoat is sooner than the next coat or bake can follow
	PotLife                         // Coat's cup cannot be sprayed up within the product's pot life
	CupSize                         // Coat alone takes more than a cup holds; mL
	PromisedTooSoon                 // the job cannot be done by its promise, even with the shop to itself. Not fatal
	DoneOrder                       // what is done is not the job's first steps in order
	DoneOverlap                     // two steps are done by one painter, or in one booth, at once
	PinPast                         // a pin is before Now or before the job is ready, or its step is done
	PinTime                         // a pin leaves no time; Needs is the nearest later time that would do
	Together                        // each job can be done, but not all: this change alone would make it possible
	TooMany                         // more than a plan can hold; Field says of what
)

// Fault is something in a day that cannot be met, or makes no sense, with the least change that would help.
type Fault struct {
	Rule       Rule
	Ref               // whose; Job is -1 where it concerns the whole day
	Product    int    // at PotLife; -1 for none
	Of         Rule   // at Together: which rule to change
	Field      string // at BadNumber and TooMany: the field's name in Day, Job, Coat and so on
	Has, Needs int    // Needs is -1 where no change of it helps
	AllOf      bool   // no single change helps: all the faults that say so have to be changed
	Soft       bool   // a plan can be made all the same
	Unknown    bool   // at Together: the search ended before it was known whether there is a plan
}

// Limits of what a day may hold. Times add up to less than half of what their numbers hold, and so do costs.
const (
	longest    = 1 << 20 // a moment, a latest recoat or a pot life, in minutes: two years
	lasting    = 1 << 14 // what something takes, in minutes: eleven days
	heaviest   = 1 << 14 // points in an aim
	mostJobs   = 128
	mostRows   = 100  // steps of one job
	mostSteps  = 2000 // of all jobs
	mostBreaks = 100
)
