package main

import (
	"html/template"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestSubscriptsAreLoweredAndNothingElseIsMarkup(t *testing.T) {
	assert.Equal(t, template.HTML("ρ<sub>2</sub> = t<sub>ref</sub> ÷ 10⁶"), formula("ρ_2 = t_ref ÷ 10⁶"))
	assert.Equal(t, template.HTML("part_: &lt;b&gt;<sub>1</sub> &amp; x"), formula("part_: <b>_1 & x"))
}
