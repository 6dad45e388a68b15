// Package sequence finds the order in which operations pass through people and places that can each do one thing at a
// time, with least and longest waits between operations, set-ups that depend on the order, loads that are baked
// together and cups that must be used up in time.
//
// It knows minutes and units, not paint: package plan maps a booth day onto it. A job shop is its plainest case, with
// machines as places and none of the rest.
//
// A plan is built by appending one operation after another. The times of what has been appended form a network of
// least and longest differences, of which only the part that later operations can still reach is kept, as a matrix of
// longest paths (difference constraints; Dechter, Meiri and Pearl 1991, from memory). Two partial plans that have done
// the same operations are compared entry by entry, and the one that leaves less room at no less cost is dropped. With
// no limit on how many are kept this is an exact dynamic programme; with a limit it is a beam, and the cheapest bound
// among those let go is a proven lower bound.
package sequence

// Never stands for a limit that is not there, in minutes.
const Never = 1 << 28

// Clean is the product of a gun with nothing in it.
const Clean = -1

// Span is a time in which a painter does not work, in minutes.
type Span struct{ From, To int32 }

// Op is one operation of a chain. All times are minutes.
type Op struct {
	Minutes int32
	Painted bool // needs a painter throughout
	Place   int  // the kind of place it needs, an index of Problem.Places; -1 for none

	After  int32 // least wait from the end of the operation before
	Within int32 // longest wait from there; Never where there is none

	Product int   // what is in the gun, or Clean for painter's work without one
	First   bool  // the first out of a batch, the coats of one chain that come out of one cup
	Batch   int32 // at First: how many operations of the chain the batch has
	Amount  int32 // at First: what the batch takes out of the cup
	Mix     int32 // at First: mixing, which ends just before the walk into the booth
	Pot     int32 // at First: longest from the start of mixing to the end of the last out of the cup

	Opens  bool  // from its start the chain stands wet in the place, until an operation that closes
	Closes bool  // after its end, and Dry minutes more, the chain no longer stands wet in the place
	Dry    int32 // see Closes
	Load   int32 // not 0: a bake of the whole place. Everything wet in it joins, which takes an equal Load and Minutes

	Earliest int32 // it may not start sooner
	Latest   int32 // it may not start later; Never where there is no such limit
	Painter  int   // this painter and no other, or -1
	Unit     int   // this unit of the place and no other, or -1
}

// Chain is the operations of a job in their order.
type Chain struct {
	Ops      []Op
	Due      int32 // promised, or Never
	Priority int64 // how much a minute late weighs against one of other chains
	Done     int32 // minutes from the end of the last operation until the job is done
}

// Fact is an operation that is done or under way: no rule is checked against it, but it binds what follows. The facts
// of a chain are its first operations, in order.
type Fact struct {
	Chain, Op      int
	Start, End     int32
	Painter, Place int   // units
	Cup            int   // facts with an equal number above 0 came out of one cup
	Mixed          int32 // when mixing of that cup began
	Gone           bool  // nothing comes out of that cup any more
}

// Weights say what a plan costs.
type Weights struct {
	Late   int64 // a minute of lateness of a chain of priority 1
	Finish int64 // a minute by which the last chain is done later
	Rinse  int64 // a rinse of a gun
	Trip   int64 // a walk into a booth
	Cup    int64 // a cup, what is lost in it included
}

// Problem is all that is to be put in order.
type Problem struct {
	Chains   []Chain
	Painters int
	Places   []int // how many units there are of each kind of place
	Room     []int // of each kind: how many chains may stand wet in one unit; 0 for any number

	Products    int
	Rinse       [][]int32 // minutes from the first product to the second; the last row and column stand for Clean
	RinseInside bool      // a rinse does not take the painter out of the booth
	Trip        int32     // minutes from outside until spraying may begin
	Holds       int32     // what a cup takes; 0 where cups are never shared
	Gun         []int     // what is in each painter's gun at the start; nil where all are clean

	Breaks [][]Span // of each painter, in order; nil where there are none
	Now    int32    // nothing starts sooner, facts apart
	Facts  []Fact   // in the order of their starts
	Weigh  Weights
}

// rinse is the time between two products in one gun, in minutes, and is 0 within a cup.
func (p *Problem) rinse(from, to int) int32 {
	if from == Clean {
		from = p.Products
	}
	if to == Clean {
		to = p.Products
	}
	return p.Rinse[from][to]
}
