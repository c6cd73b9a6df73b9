//! Prints the plan of a case as JSON, or the refusal with its reasons.
//!
//! ```text
//! cargo run -p tussock-core --example plan -- core/examples/cases/bramble.json
//! cargo run -p tussock-core --example plan < core/examples/cases/bramble.json
//! ```
//!
//! A case is an export of the log (`"format":"tussock-log","version":1`) with a few fields beside its records:
//!
//! | field | what | required |
//! | --- | --- | --- |
//! | `records` | animals, measurements, lots, foods, nets, vets' words, each in its stored shape | yes |
//! | `now` | the time of the case, milliseconds of UTC since 1970 | yes |
//! | `zone` | `name`, `before_min` and `changes` (`at`, `offset_min`) of the wall clock | yes |
//! | `visits` | when somebody comes, local `HH:MM`, rising | yes |
//! | `subject` | `animal:<id>` or `group:<id>`; without it, every animal | no |
//! | `asked` | the level asked for, hundredths of a percent of body weight (125 is 1.25 %) | no |
//! | `hays` | `lot` and its part of the forage dry matter in `hundredths` | no |
//!
//! The answer is one JSON object with an entry a subject: `plan`, `group`, `refused` or `no_draft`. Numbers are unrounded,
//! in the unit that the field names. The command ends with 0 for a plan and for a refusal, which is an answer; with 1
//! for a case that cannot be read, and says which record and field.

use std::io::{Read, Write};
use std::process::ExitCode;
use tussock_core::log::Case;

fn main() -> ExitCode {
    match run() {
        Ok(text) => {
            // A closed pipe is the reader's wish.
            let _ = writeln!(std::io::stdout(), "{text}");
            ExitCode::SUCCESS
        }
        Err(error) => {
            eprintln!("{error}");
            ExitCode::FAILURE
        }
    }
}

fn run() -> Result<String, String> {
    let text = if let Some(path) = std::env::args().nth(1) {
        std::fs::read_to_string(&path).map_err(|error| format!("{path}: {error}"))?
    } else {
        let mut text = String::new();
        std::io::stdin()
            .read_to_string(&mut text)
            .map_err(|error| format!("standard input: {error}"))?;
        text
    };
    let case = Case::read(&text).map_err(|error| format!("the case cannot be read: {error:?}"))?;
    serde_json::to_string_pretty(&case.account()).map_err(|error| error.to_string())
}
