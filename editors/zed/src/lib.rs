//! Starts `stitchproof lsp` for crochet patterns.

use zed_extension_api::{
    register_extension, Command, Extension, LanguageServerId, Result, Worktree,
};

struct Stitchproof;

impl Extension for Stitchproof {
    fn new() -> Self {
        Stitchproof
    }

    fn language_server_command(
        &mut self,
        _server: &LanguageServerId,
        worktree: &Worktree,
    ) -> Result<Command> {
        let command = worktree
            .which("stitchproof")
            .ok_or("there is no program stitchproof on the path")?;
        Ok(Command {
            command,
            args: vec!["lsp".to_string()],
            env: worktree.shell_env(),
        })
    }
}

register_extension!(Stitchproof);
