package job

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func randomRecipe(r *rand.Rand) recipe {
	p := recipe{
		coats: 1 + r.IntN(4), perCoat: 20 + 3000*r.Float64(), rate: 20 + 300*r.Float64(),
		cup: 100 + 900*r.Float64(), mixing: 10 * r.Float64(), flash: 40 * r.Float64(), potLife: math.Inf(1),
	}
	p.lost = p.cup * r.Float64() / 4
	if r.IntN(3) > 0 {
		p.potLife = 5 + 200*r.Float64()
	}
	return p
}

// The rules are checked against the plan from outside: nothing here knows how the plan was found.
func TestAPlanKeepsItsRules(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	planned := 0
	for range 20000 {
		p := randomRecipe(r)
		cups := p.plan()
		if cups == nil {
			continue
		}
		planned++
		perCoat := make([]float64, p.coats+1)
		coat := 1
		for _, c := range cups {
			now, sum := p.mixing, 0.0
			for i, s := range c.sprays {
				require.GreaterOrEqual(t, s.coat, coat, "coats in order: %+v", p)
				if i > 0 {
					require.Equal(t, coat+1, s.coat)
					now += p.flash
				}
				coat = s.coat
				now += s.volume / p.rate
				sum += s.volume
				perCoat[s.coat] += s.volume
			}
			require.LessOrEqual(t, now, p.potLife+1e-6, "past its pot life: %+v", p)
			require.LessOrEqual(t, sum, p.cup-p.lost+1e-6, "overfull: %+v", p)
			require.InDelta(t, sum, c.spray, 1e-9*sum)
		}
		for k := 1; k <= p.coats; k++ {
			require.InDelta(t, p.perCoat, perCoat[k], 1e-4*p.perCoat, "coat %d of %+v", k, p)
		}
	}
	require.Greater(t, planned, 10000, "too few recipes had a plan for this test to say anything")
}

// Without a pot life, cups that can hold a coat hold whole ones, as many as fit; otherwise they are the fewest and even.
func TestWithoutAPotLifeTheCupsAreTheFewest(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	whole := 0
	for range 5000 {
		p := randomRecipe(r)
		p.potLife = math.Inf(1)
		cups := p.plan()
		holds := p.cup - p.lost
		n := math.Ceil(p.perCoat * float64(p.coats) / holds * (1 - 1e-9))
		if coats := math.Floor(holds / p.perCoat); coats >= 1 {
			whole++
			require.True(t, wholeCoats(cups), "%+v", p)
			require.Len(t, cups, int(math.Ceil(float64(p.coats)/coats)), "%+v", p)
			continue
		}
		if n > mostCups {
			require.Nil(t, cups)
			continue
		}
		require.Len(t, cups, int(n), "%+v", p)
		for _, c := range cups {
			require.InEpsilon(t, cups[0].spray, c.spray, 1e-3, "cups are even: %+v", p)
		}
	}
	require.Greater(t, whole, 500)
}

func TestAShorterPotLifeNeverNeedsFewerCups(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for range 5000 {
		p := randomRecipe(r)
		p.potLife = 20 + 100*r.Float64()
		q := p
		q.potLife *= 0.5 + r.Float64()/2
		long, short := p.plan(), q.plan()
		if short != nil {
			require.NotNil(t, long)
			require.LessOrEqual(t, len(long), len(short), "%+v", p)
		}
	}
}

func TestNoPlanWherePaintCannotBeSprayedInTime(t *testing.T) {
	p := recipe{coats: 1, perCoat: 100, rate: 100, cup: 600, mixing: 10, potLife: 10}
	assert.Empty(t, p.plan(), "the pot life ends as mixing does")
	p.potLife = 10.01
	assert.Nil(t, p.plan(), "one millilitre a cup would take more cups than a card holds")
	p.potLife = 11
	assert.Len(t, p.plan(), 1)
}
