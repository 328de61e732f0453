package lint

import (
	"slices"

	"stitchproof/lang/fabric"
	"stitchproof/lang/syntax"
)

// missingTurns finds the rows of a piece that should end in a turn and do
// not: the piece is worked flat, its other rows turn, and nothing says that
// this one does not.
func missingTurns(piece *fabric.Piece) []*fabric.Row {
	var missing []*fabric.Row
	turned := 0
	for _, row := range piece.Rows {
		next := row.After()
		switch {
		case !row.Works():
		case next == nil:
			if endsTurned(row) {
				turned += max(0, row.Repeats[0]-1) // between the rows that it stands for
			}
		case endsTurned(row):
			turned += max(1, row.Repeats[0])
		case beginsTurned(next):
			turned++
		case turnExpected(row, next):
			missing = append(missing, row)
		}
	}
	if exceptional(len(missing), turned) || turned > 0 && len(missing) == 1 && facesAbout(missing[0]) {
		return missing
	}
	if turned > 0 {
		return repeatedUnturned(piece)
	}
	return nil
}

// repeatedUnturned lists the flat rows that are worked over and over by themselves, `rep row 2
// until …`, and do not say to turn: one of them is as many as they are worked.
func repeatedUnturned(piece *fabric.Piece) []*fabric.Row {
	var out []*fabric.Row
	for _, r := range piece.Rows {
		if of := repeatsAlone(r); of != nil && of.Works() && !endsTurned(of) && !beginsTurned(of) && turnExpected(of, of) && !slices.Contains(out, of) {
			out = append(out, of)
		}
	}
	return out
}

// facesAbout tells whether a row and the next name their sides, and not the same:
// the work is turned between them, whatever they say.
func facesAbout(row *fabric.Row) bool {
	side, next := row.Tree.Label.Side, row.After().Tree.Label.Side
	return side != syntax.NoSide && next != syntax.NoSide && side != next
}

// exceptional tells whether some rows of a piece that lack something are
// slips: they are few, and the others show the habit of the writer.
func exceptional(lacking, regular int) bool {
	return regular >= 2 && (lacking == 1 || 5*lacking <= regular)
}

// turnExpected tells whether two rows that follow each other are flat ones of
// one fabric, with nothing said that makes up for the turn.
func turnExpected(row, next *fabric.Row) bool {
	a, b := row.Tree, next.Tree
	switch {
	case row.Round || next.Round || row.Joined || row.Turned || a.Label.Round || b.Label.Round:
		return false
	case b.Label.Kind != syntax.Numbered && b.Label.Kind != syntax.NextRow || a.Label.Kind == syntax.Named:
		return false
	case a.Label.Side != syntax.NoSide && a.Label.Side == b.Label.Side:
		return false // the same side on purpose
	case has[*syntax.Turn](a) || has[*syntax.NoJoin](a) || has[*syntax.Rows](a) || has[*syntax.Even](a) || len(a.Unread()) > 0:
		return false // says so, leaves it to other rows, or says something that is not understood
	}
	return !interrupted(row, next)
}

// interrupted tells whether the yarn is fastened off or joined anew between
// two rows: the second then starts wherever it says.
func interrupted(row, next *fabric.Row) bool {
	if has[*syntax.Finish](row.Tree) || joinsYarn(next) {
		return true
	}
	return slices.ContainsFunc(between(row, next), func(r *fabric.Row) bool { return has[*syntax.Finish](r.Tree) || joinsYarn(r) })
}

func joinsYarn(row *fabric.Row) bool {
	return slices.ContainsFunc(clausesOf[*syntax.Yarn](row.Tree), func(y *syntax.Yarn) bool { return y.Action == syntax.YarnJoin })
}

// endsTurned tells whether the work is turned after a row. A row that repeats
// others ends as they do.
func endsTurned(row *fabric.Row) bool {
	if has[*syntax.Rows](row.Tree) {
		return row.Turned
	}
	worked := false
	turned := false
	for _, c := range row.Tree.Clauses {
		if t, ok := c.Node.(*syntax.Turn); ok {
			turned = !t.Not && worked
		}
		worked = worked || worksClause(c)
	}
	return turned
}

// beginsTurned tells whether a row begins with the turn.
func beginsTurned(row *fabric.Row) bool {
	for _, c := range row.Tree.Clauses {
		if t, ok := c.Node.(*syntax.Turn); ok {
			return !t.Not
		}
		if worksClause(c) {
			return false
		}
	}
	return false
}

// worksClause tells whether a clause works stitches, a beginning chain not.
func worksClause(c syntax.Clause) bool {
	switch c.Node.(type) {
	case *syntax.Work, *syntax.Group, *syntax.Bracket, *syntax.Repeat, *syntax.Skip, *syntax.Even, *syntax.Rows:
		return true
	}
	return false
}
