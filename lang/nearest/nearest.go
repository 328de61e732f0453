// Package nearest finds the known word that a misspelt one was meant to be.
package nearest

// To gives the known word that the fewest slips of the pen away from a word
// lies, the first of equals; false where none is near enough to be meant.
func To(word string, known []string) (string, bool) {
	best, fewest := "", tolerance(word)+1
	for _, k := range known {
		if n := Slips(word, k); n < fewest {
			best, fewest = k, n
		}
	}
	return best, best != ""
}

// tolerance is how many slips a word of a length may have: one in three
// letters, so that short words are not taken for each other.
func tolerance(word string) int { return max(1, len([]rune(word))/3) }

// Slips is how many letters were left out, put in, changed or swapped with
// their neighbour: the distance of Damerau and Levenshtein, each place edited
// once.
func Slips(a, b string) int {
	x, y := []rune(a), []rune(b)
	rows := make([][]int, len(x)+1)
	for i := range rows {
		rows[i] = make([]int, len(y)+1)
		rows[i][0] = i
	}
	for j := range y {
		rows[0][j+1] = j + 1
	}
	for i := range x {
		for j := range y {
			changed := rows[i][j]
			if x[i] != y[j] {
				changed++
			}
			n := min(rows[i][j+1]+1, rows[i+1][j]+1, changed)
			if i > 0 && j > 0 && x[i] == y[j-1] && x[i-1] == y[j] {
				n = min(n, rows[i-1][j-1]+1)
			}
			rows[i+1][j+1] = n
		}
	}
	return rows[len(x)][len(y)]
}
