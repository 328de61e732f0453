;;; test.el --- What a person sees of a pattern in Emacs  -*- lexical-binding: t -*-

;;; Commentary:

;; Types into a pattern and holds what Emacs shows against what it should.  Ends
;; Emacs with code 1 at the first thing that is not seen.

;;; Code:

(defun crochet-test--say (what)
  "Note WHAT was seen or not."
  (write-region (concat what "\n") nil (expand-file-name "seen" (getenv "TMPDIR")) t 'quiet))

(defun crochet-test--at (line words)
  "Go to WORDS in LINE."
  (goto-char (point-min))
  (forward-line (1- line))
  (search-forward words)
  (goto-char (match-beginning 0)))

(defun crochet-test--face (line words)
  "The face of WORDS in LINE."
  (font-lock-ensure)
  (crochet-test--at line words)
  (get-text-property (point) 'face))

(defun crochet-test--counts (line)
  "What stands in LINE that is not of the text: counts, however eglot shows them."
  (save-excursion
    (goto-char (point-min))
    (forward-line (1- line))
    (mapconcat (lambda (o) (concat (overlay-get o 'before-string) (overlay-get o 'after-string)))
               (sort (seq-filter (lambda (o) (or (overlay-get o 'crochet-count) (overlay-get o 'eglot--inlay-hint)))
                                 (overlays-in (line-beginning-position) (1+ (line-end-position))))
                     (lambda (a b) (< (overlay-start a) (overlay-start b))))
               " ")))

(defun crochet-test--faults ()
  "What is underlined as an error, with its words."
  (mapcar (lambda (d) (cons (buffer-substring-no-properties (flymake-diagnostic-beg d) (flymake-diagnostic-end d))
                            (flymake-diagnostic-text d)))
          (seq-filter (lambda (d) (eq (flymake-diagnostic-type d) 'eglot-error)) (flymake-diagnostics))))

(defun crochet-test--replace (line from to)
  "Type TO over FROM in LINE."
  (crochet-test--at line from)
  (delete-char (length from))
  (execute-kbd-macro to))

(defvar crochet-test--steps
  (list
   (cons "a pattern's own mode" (lambda () (eq major-mode 'crochet-mode)))
   (cons "colours" (lambda ()
     (equal (list (crochet-test--face 35 "Rnd 5") (crochet-test--face 35 "Sc in") (crochet-test--face 35 "(16 sts)")
                  (crochet-test--face 43 "Fasten off"))
            '(font-lock-function-name-face font-lock-builtin-face font-lock-constant-face font-lock-keyword-face))))
   (cons "the finding, underlined at its count" (lambda ()
     (let ((fault (car (crochet-test--faults))))
       (and fault (equal (car fault) "(16 sts)") (string-match-p "makes 15 sts, says 16" (cdr fault))))))
   (cons "one error in the mode line" (lambda () (string-match-p "Flymake\\[1 0\\]" (format-mode-line mode-line-format))))
   (cons "the count in its line" (lambda () (string-match-p "15.*= 15 sts" (crochet-test--counts 35))))
   (cons nil (lambda () (crochet-test--at 36 "c in next 4") (execute-kbd-macro "\C-b")))
   (cons "what a stitch is, in the echo area" (lambda () (string-match-p "UK: dc, double crochet" (or (current-message) ""))))
   (cons nil (lambda () (crochet-test--replace 35 "16" "15")))
   (cons "no finding once the count is right" (lambda () (null (flymake-diagnostics))))
   (cons nil (lambda () (crochet-test--replace 59 "8" "9")))
   (cons "the new count after an edit" (lambda () (string-match-p "8.*= 8 sts" (crochet-test--counts 60))))
   (cons "what the edit makes wrong" (lambda () (string-match-p "makes 8 sts, says 7" (or (cdar (crochet-test--faults)) "")))))
  "What is to be seen, or without a name done, one after the other.")

(defvar crochet-test--end 0 "When waiting for a step ends.")

(defun crochet-test--step ()
  "Go on with the steps as far as they hold."
  (condition-case err
      (with-selected-window (get-buffer-window (find-buffer-visiting (getenv "PATTERN")))
        (let* ((step (car crochet-test--steps)) (seen (if (car step) (save-excursion (funcall (cdr step))) (funcall (cdr step)))))
          (when (or seen (null (car step)))
            (when (car step) (crochet-test--say (concat "seen: " (car step))))
            (setq crochet-test--end (+ (float-time) 20))
            (pop crochet-test--steps))
          (cond
           ((null crochet-test--steps) (set-buffer-modified-p nil) (kill-emacs 0))
           ((> (float-time) crochet-test--end)
            (crochet-test--say (format "NOT SEEN: %s\nflymake: %S\ncounts: %S\nmessage: %S" (car step)
                                       (mapcar #'flymake-diagnostic-text (flymake-diagnostics))
                                       (crochet-test--counts 35) (current-message)))
            (kill-emacs 1)))))
    (error (crochet-test--say (format "BROKE DOWN: %S" err))
           (kill-emacs 1))))

(defun crochet-test ()
  "See what there is to see."
  (setq crochet-test--end (+ (float-time) 20))
  (run-at-time 0.2 0.2 #'crochet-test--step))

;;; test.el ends here
