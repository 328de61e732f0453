autocmd BufRead,BufNewFile *.crochet setfiletype crochet
