package stitch
import ("testing";"fmt";"sort";"strings")
func TestFam(t *testing.T){ c:=map[string]int{}; for k,m:=range Spellings() { s:=m.In(Unsettled); c[s.Class.String()]++; _=k }; fmt.Println(len(Spellings()),c)
 var one []string; for k,m:=range Spellings() { if m.US==nil||m.UK==nil { d:="US "; if m.US==nil {d="UK "}; one=append(one,d+k)} }; sort.Strings(one)
 for _,o:=range one { if !strings.Contains(o,"tog") && !strings.Contains(o,"sc") && !strings.Contains(o,"single") && !strings.Contains(o,"hdc")&& !strings.Contains(o,"half") {fmt.Println(o)} } }
