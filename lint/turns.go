package lint

import (
	"slices"

	"stitchproof/lang/fabric"
	"stitchproof/lang/syntax"
)

// missingTurns finds the rows of a piece that should turn and do not: the piece is
// worked flat, its other rows turn, and nothing says that this one does not. It also tells
// whether the others say it where they begin.
func missingTurns(piece *fabric.Piece) (missing []*fabric.Row, atBegin bool) {
	ending, beginning, lastSilent := 0, 0, false
	for _, row := range piece.Rows {
		next := row.After()
		switch {
		case !row.Works():
		case endsTurned(row):
			between := row.Repeats[0] // the rows that it stands for
			if next == nil {
				between--
			}
			ending += max(1, between)
		case next == nil:
			lastSilent = !has[*syntax.Rows](row.Tree)
		case beginsTurned(next):
			beginning++
		case turnExpected(row, next):
			missing = append(missing, row)
		}
	}
	turned := ending + beginning
	switch {
	case turned == 0:
		return nil, false
	case !exceptional(len(missing), turned) && (len(missing) != 1 || lastSilent && !facesAbout(missing[0])):
		return repeatedUnturned(piece), false
	case beginning <= ending:
		return missing, false
	}
	for i, row := range missing {
		missing[i] = row.After()
	}
	return missing, true
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
	case next.Continued:
		return false // one row in several lines
	case row.Round || next.Round || row.Joined || row.Turned && !beginsTurned(row) || a.Label.Round || b.Label.Round:
		return false
	case a.Label.Kind == syntax.Named || a.Label.Kind == syntax.Unlabelled || b.Label.Kind != syntax.Numbered && b.Label.Kind != syntax.NextRow && !has[*syntax.Rows](b):
		return false
	case len(b.Unread()) > 0 || has[*syntax.Rows](b) && repeatsFirst(next) == nil:
		return false // how it begins is not seen
	case a.Label.Side != syntax.NoSide && a.Label.Side == b.Label.Side:
		return false // the same side on purpose
	case lastTurn(a) != nil || has[*syntax.NoJoin](a) || has[*syntax.Rows](a) || has[*syntax.Even](a) || has[*syntax.Shaping](a) || len(a.Unread()) > 0:
		return false // says so, leaves it to other rows, or says something that is not understood
	}
	return !interrupted(row, next) && !slices.ContainsFunc(between(row, next), func(r *fabric.Row) bool { return has[*syntax.Turn](r.Tree) })
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
	t := lastTurn(row.Tree)
	return t != nil && !t.Not
}

// lastTurn is the turn that is told of, or said not to be, after a row's stitches, nil
// for none.
func lastTurn(row *syntax.Row) (last *syntax.Turn) {
	worked := false
	for _, c := range row.Clauses {
		if t, ok := c.Node.(*syntax.Turn); ok && worked {
			last = t
		}
		worked = worked || worksClause(c)
	}
	return last
}

// beginsTurned tells whether a row begins with the turn. A row that repeats others begins
// as they do.
func beginsTurned(row *fabric.Row) bool {
	if first := repeatsFirst(row); first != nil {
		return beginsTurned(first)
	}
	for _, c := range row.Tree.Clauses {
		if t, ok := c.Node.(*syntax.Turn); ok {
			return !t.Not && !t.OtherSide
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
