package drying

import (
	"fmt"
	"math"
	"testing"
)

func TestX(t *testing.T) {
	for _, c := range [][2]float64{{20, 0}, {20, 50}, {20, 80}, {30, 50}, {30, 80}, {40.6, 4}, {15, 85}, {25, 50}, {23, 50}} {
		T, K := liquids[Water].drop(in(c[0], c[1], 0))
		fmt.Println(c, T-kelvin, K*1e12, 2500/(K*1e12))
	}
	fmt.Println(sherwood(0, 1), 2*1.51)
	_, b := liquids["butyl-acetate"].drop(place{air: 298.15, pressure: standardAir})
	for k, l := range liquids {
		T, K := l.drop(place{air: 298.15, pressure: standardAir})
		fmt.Println(k, T-kelvin, K/b, math.Sqrt(K))
		T, K = l.drop(place{air: 293.15, pressure: standardAir})
		fmt.Println(k, T-kelvin)
	}
}
