package stitch
import "testing"
func BenchmarkRead(b *testing.B){ b.ReportAllocs(); for b.Loop(){ d,err:=readDictionary(stitchTable,familyTable,nameTable,sourceTable); if err!=nil{b.Fatal(err)}; _=d } }
func TestSize(t *testing.T){ t.Log(len(All()), len(Spellings())) }
