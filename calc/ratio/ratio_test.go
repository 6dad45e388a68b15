package ratio_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"spraywright/calc/ratio"

	"github.com/stretchr/testify/assert"
)

// What the printed forms stand for is common practice of data sheets, without a single source.
func TestParse(t *testing.T) {
	for text, want := range map[string][]float64{
		"4:1:1":                 {4, 1, 1},
		"4:1":                   {4, 1},
		" 4 : 1 : 1 ":           {4, 1, 1},
		"4:1+10%":               {4, 1, 0.5}, // of the 5 parts of mixed paint
		"4 : 1 + 10 %":          {4, 1, 0.5},
		"4:1:10%":               {4, 1, 0.5},
		"2:1+5%+10%":            {2, 1, 0.15, 0.3}, // both of the 3 parts
		"1+25%":                 {1, 0.25},
		"100:50":                {100, 50},
		"100 + 50 + 20":         {100, 50, 20},
		"4/1/1":                 {4, 1, 1},
		"0,5:1":                 {0.5, 1},
		"1:0,5:0,25":            {1, 0.5, 0.25},
		"2.5:1":                 {2.5, 1},
		"0,125:1":               {0.125, 1}, // nobody writes thousands after a 0
		"1250:100":              {1250, 100},
		".5:1":                  {0.5, 1},
		"4:0:1":                 {4, 0, 1},
		"1":                     {1},
		"70%:20%:10%":           {70, 20, 10},
		"60% + 30% + 10%":       {60, 30, 10},
		"33%:33%:33%":           {33, 33, 33}, // printed rounded
		"33,3 % : 66,7 %":       {33.3, 66.7},
		"100%":                  {100},
		"100% + 10%":            {100, 10},
		"100%:50%:20%":          {100, 50, 20},
		"4：1∶1":                 {4, 1, 1},
		"4\u00a0:\u202f1":       {4, 1},
		"1:2:3:4:5:6":           {1, 2, 3, 4, 5, 6},
		"100000:1":              {100000, 1},
		"5:1+0%":                {5, 1, 0},
		"1 + 150%":              {1, 1.5},
		"0.0001:1":              {0.0001, 1},
		"10:3+15,5%":            {10, 3, 2.015},
		"2:1 + 5 % + 5 % + 5 %": {2, 1, 0.15, 0.15, 0.15},
	} {
		got, fault := ratio.Parse(text)
		if assert.Nil(t, fault, text) && assert.Len(t, got, len(want), text) {
			assert.InDeltaSlice(t, want, got, 1e-12, text)
		}
	}
}

func TestParseRefuses(t *testing.T) {
	for text, want := range map[string]string{
		"":                    "is not complete",
		" ":                   "is not complete",
		":":                   "is not complete",
		"4:":                  "is not complete",
		"4: ":                 "is not complete",
		":4":                  "is not complete",
		"4::1":                "is not complete",
		"4:+10%":              "is not complete",
		"4:1+%":               "is not complete",
		"4-1":                 "has “4-1” where a number belongs",
		"4:-1":                "has “-1” where a number belongs",
		"4 1 1":               "has “4 1 1” where a number belongs",
		"4:1 thinner":         "has “1 thinner” where a number belongs",
		"4,1,1":               "has “4,1,1” where a number belongs",
		"1.2.3:1":             "has “1.2.3” where a number belongs",
		"1e3:1":               "has “1e3” where a number belongs",
		"NaN:1":               "has “NaN” where a number belongs",
		"Inf":                 "has “Inf” where a number belongs",
		"０:1":                 "has “０” where a number belongs",
		".:1":                 "has “.” where a number belongs",
		"10%%":                "has “10%” where a number belongs",
		"1,250:100":           "has “1,250”, which can be read two ways",
		"1/2:1":               "has both “/” and “:” and can be read two ways",
		"0:1":                 "starts with 0",
		"0%:100%":             "starts with 0",
		"4:10%:1":             "has a part after a percentage",
		"10%:4":               "has a part after a percentage",
		"60%+10%":             "has percentages that do not add up to 100",
		"10%":                 "has percentages that do not add up to 100",
		"1:1:1:1:1:1:1":       "has more than six parts",
		"100001:1":            "has a part of more than 100000",
		"1:999999999999999":   "has a part of more than 100000",
		"100000:1 + 100000 %": "has a percentage far too large",
	} {
		got, fault := ratio.Parse(text)
		assert.Nil(t, got, text)
		if assert.NotNil(t, fault, text) {
			assert.Equal(t, want, fault.Error(), text)
			assert.NotEmpty(t, fault.Fix, text)
			assert.False(t, strings.HasSuffix(string(fault.Message+fault.Fix), "."), text)
		}
		assert.Equal(t, fault, ratio.Check(text), text)
	}
	assert.Nil(t, ratio.Check("4:1:1"))
}

func ExampleParse() {
	parts, _ := ratio.Parse("4:1+10%")
	fmt.Println(parts)
	_, fault := ratio.Parse("4:1:")
	fmt.Println("Mix ratio", fault.Message)
	// Output:
	// [4 1 0.5]
	// Mix ratio is not complete
}

func FuzzParse(f *testing.F) {
	for _, s := range []string{"4:1:1", "4:1+10%", "0,5:1", "70%:20%:10%", "100% + 10%", "4::1", "", "1/2:1", "：％", "99999999999999999999", "4:1:\xff"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		parts, fault := ratio.Parse(s)
		if fault != nil {
			if parts != nil || fault.Message == "" || fault.Fix == "" {
				t.Fatalf("%q: a fault needs words and no parts: %v %v", s, parts, *fault)
			}
			return
		}
		if len(parts) < 1 || len(parts) > ratio.Most || !(parts[0] > 0) {
			t.Fatalf("%q: %v", s, parts)
		}
		for _, x := range parts {
			if !(x >= 0) || math.IsInf(x, 0) {
				t.Fatalf("%q: %v", s, parts)
			}
		}
	})
}
