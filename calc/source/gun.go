package source

// The works on guns and strokes.
var (
	IsentropicFlow = &Work{ID: "isentropic-flow", Ours: "Isentropic flow of air through an opening, as in any textbook of gas dynamics"}
	UniformSpeed   = &Work{ID: "uniform-speed", Title: "Coating uniformity with a uniform robotic spray gun velocity, J. Tsinghua Univ. (Sci. & Tech.)"}
	Refinishing22  = &Work{ID: "refinishing-2022", Title: "Auto Collision Repair and Refinishing, textbook, 2022"}
)
