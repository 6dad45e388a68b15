package main

import (
	"strings"

	"spraywright/site/supply"
)

// licencesFile holds what has to go wherever the compiled cores go: the licences of the software in them.
const licencesFile = "licences.txt"

func addLicences(site bundle) error {
	shipped, err := supply.Shipped()
	if err != nil {
		return err
	}
	site[licencesFile] = []byte(supply.Notices(shipped))
	return nil
}

// noticesIn is the same as a comment of a script, for what leaves the site by itself.
func noticesIn(site bundle) string {
	return "\n/*!\n" + strings.ReplaceAll(string(site[licencesFile]), "*/", "* /") + "*/\n"
}
