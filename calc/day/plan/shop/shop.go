// Package shop orders jobs on machines: the plain job shop, in which each job visits machines in an order of its own,
// each machine does one thing at a time, and the end of the last job is to be as early as possible.
//
// Two methods share the work: a tabu search that moves operations within the blocks of a critical path finds good plans,
// and a branch and bound over the order of pairs proves how good they are. Both use the disjunctive graph (Roy and
// Sussmann 1964). Sources are named at the functions, all from memory.
package shop

// Task is one operation of a job: the machine from 0 on, and how long it takes.
type Task struct {
	Machine int
	Minutes int32
}

// none stands for an operation that is not there.
const none = -1

// graph is the fixed part of the disjunctive graph: operations in the order of jobs.
type graph struct {
	minutes    []int32
	machine    []int
	before     []int32 // in its job, or none
	after      []int32
	onMachine  [][]int32
	job, index []int
}

func newGraph(jobs [][]Task) *graph {
	g := &graph{}
	for j, tasks := range jobs {
		for i, t := range tasks {
			id := int32(len(g.minutes))
			before, after := int32(none), int32(none)
			if i > 0 {
				before = id - 1
			}
			if i+1 < len(tasks) {
				after = id + 1
			}
			g.minutes, g.machine = append(g.minutes, t.Minutes), append(g.machine, t.Machine)
			g.before, g.after = append(g.before, before), append(g.after, after)
			g.job, g.index = append(g.job, j), append(g.index, i)
			for len(g.onMachine) <= t.Machine {
				g.onMachine = append(g.onMachine, nil)
			}
			g.onMachine[t.Machine] = append(g.onMachine[t.Machine], id)
		}
	}
	return g
}

// Solver improves a plan for as long as it is asked to. Equal jobs, seeds and evaluations give equal plans.
type Solver struct {
	g     *graph
	t     *tabu
	b     *branch
	turn  bool // it is the branch and bound's turn
	left  int  // evaluations left of the turn
	spent int
}

// New makes a solver and a first plan.
func New(jobs [][]Task, seed uint64) *Solver {
	g := newGraph(jobs)
	return &Solver{g: g, t: newTabu(g, seed), b: newBranch(g), left: 4000}
}

// nodeCost is how many evaluations a node of the branch and bound counts for: it takes about as long.
func (s *Solver) nodeCost() int { return 4 + s.b.size*s.b.size/200 }

// Improve spends about that many evaluations, and tells whether it found a better plan. The search has three quarters of
// them, the proof the rest.
func (s *Solver) Improve(evaluations int) bool {
	better := false
	for evaluations > 0 && !s.Proven() {
		if s.left <= 0 {
			s.turn = !s.turn
			s.left = 12000
			if s.turn {
				s.left = 4000
			}
		}
		n := min(evaluations, s.left)
		if s.turn {
			n = min(s.left, s.nodeCost())
			better = s.branch(1) || better
		} else {
			better = s.t.run(n) || better
		}
		evaluations -= n
		s.left -= n
		s.spent += n
	}
	return better
}

func (s *Solver) branch(nodes int) bool {
	s.b.best = min(s.b.best, s.t.best)
	if !s.b.run(nodes) {
		return false
	}
	s.t.adopt(s.b.starts, s.b.best)
	return true
}

// Finish is the end of the last job in the best plan, and Bound an end that no plan beats.
func (s *Solver) Finish() int32 { return s.t.best }

// Bound is the least end of the last job that is not ruled out.
func (s *Solver) Bound() int32 {
	if s.b.done {
		return s.t.best
	}
	return s.b.bound
}

// Proven tells that no plan is better.
func (s *Solver) Proven() bool { return s.Bound() >= s.t.best }

// Evaluations is how much has been tried so far.
func (s *Solver) Evaluations() int { return s.spent }

// Starts is when each task of each job starts in the best plan.
func (s *Solver) Starts() [][]int32 {
	var all [][]int32
	for op, j := range s.g.job {
		if j == len(all) {
			all = append(all, nil)
		}
		all[j] = append(all[j], s.t.bestStart[op])
	}
	return all
}
