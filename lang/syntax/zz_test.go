package syntax_test
import ("testing";"fmt";"os";"stitchproof/lang/syntax")
func TestZZ(t *testing.T){ 
 r:=syntax.Lex(os.Getenv("ZZ"), syntax.Standard())
 for _,x:=range r { fmt.Printf("[%v %q %q]", x.Kind, x.Canon, x.Written) }
 fmt.Println()
}
