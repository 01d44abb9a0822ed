// Package outputtest holds made-up results for the tests of the output's rooms.
package outputtest
