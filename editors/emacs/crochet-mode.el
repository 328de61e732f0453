;;; crochet-mode.el --- Crochet patterns, counted as they are written  -*- lexical-binding: t -*-

;; Version: 0.1
;; Package-Requires: ((emacs "28.1") (eglot "1.9"))
;; Keywords: languages

;;; Commentary:

;; Colours a pattern and has eglot start `stitchproof lsp' for it.  What eglot
;; does not show before its version 1.10, the running count, is drawn here at
;; the ends of lines.

;;; Code:

(require 'crochet-colours)
(require 'eglot)

;;;###autoload
(define-derived-mode crochet-mode text-mode "Crochet"
  "Major mode for crochet patterns."
  (setq-local comment-start "// "
              font-lock-defaults '(crochet-colours t t))
  (add-hook 'eglot-managed-mode-hook #'crochet--count-from-now-on nil t))

;;;###autoload
(add-to-list 'auto-mode-alist '("\\.crochet\\'" . crochet-mode))

(add-to-list 'eglot-server-programs '(crochet-mode . ("stitchproof" "lsp")))
(add-hook 'crochet-mode-hook #'eglot-ensure)

(defface crochet-count '((t :inherit shadow))
  "The count behind a line."
  :group 'crochet-mode)

(defvar-local crochet--timer nil
  "Runs when the writer pauses after a change.")

(defun crochet--count-from-now-on ()
  "Show counts while the server serves this buffer."
  (remove-overlays nil nil 'crochet-count t)
  (remove-hook 'after-change-functions #'crochet--changed t)
  (when (and (eglot-managed-p) (not (fboundp 'eglot-inlay-hints-mode)))
    (add-hook 'after-change-functions #'crochet--changed nil t)
    (run-at-time 0 nil #'crochet--count (current-buffer)))) ; when eglot has told the server of the buffer

(defun crochet--changed (&rest _)
  "Ask for the counts again when the writer pauses."
  (when crochet--timer (cancel-timer crochet--timer))
  (setq crochet--timer (run-with-idle-timer 0.6 nil #'crochet--count (current-buffer))))

(defun crochet--count (buffer)
  "Ask the server for the counts of BUFFER."
  (when (buffer-live-p buffer)
    (with-current-buffer buffer
      (when-let ((server (eglot-current-server)))
        (jsonrpc-async-request
         server :textDocument/inlayHint
         `(:textDocument (:uri ,(eglot--path-to-uri buffer-file-name))
           :range (:start (:line 0 :character 0)
                   :end (:line ,(line-number-at-pos (point-max) t) :character 0)))
         :success-fn (lambda (hints) (crochet--draw buffer hints))
         :deferred :textDocument/inlayHint)))))

(defun crochet--draw (buffer hints)
  "Draw HINTS at the ends of the lines of BUFFER."
  (when (buffer-live-p buffer)
    (with-current-buffer buffer
      (save-excursion
        (save-restriction
          (widen)
          (remove-overlays nil nil 'crochet-count t)
          (dolist (line (seq-group-by (lambda (hint) (plist-get (plist-get hint :position) :line)) hints))
            (goto-char (point-min))
            (forward-line (car line))
            (let ((end (make-overlay (line-end-position) (line-end-position)))
                  (labels (mapcar (lambda (hint) (plist-get hint :label)) (cdr line))))
              (overlay-put end 'crochet-count t)
              (overlay-put end 'after-string
                           (propertize (concat " " (string-join labels " · ")) 'face 'crochet-count)))))))))

(provide 'crochet-mode)
;;; crochet-mode.el ends here
