//! The build tool behind `cargo xtask`: finds or gets a compiler for the browser, builds, serves, tests and
//! measures. `cargo xtask --help` lists the commands.
#![forbid(unsafe_code)]

mod answer;
mod args;
mod budget;
mod bundle;
mod cases;
mod chromium;
mod compiler;
mod cut;
mod debian;
mod dist;
mod engines;
mod folders;
mod host;
mod lint;
mod measure;
mod median;
mod mime;
mod node;
mod pave;
mod policy;
mod progress;
mod purity;
mod road;
mod run;
mod site;
mod solver;
mod squeeze;
mod stamp;
mod tally;
mod test;
mod token;

use std::process::ExitCode;

use anyhow::Result;

use crate::args::Call;
use crate::folders::Folders;
use crate::progress::Steps;

fn main() -> ExitCode {
    match args::parse(std::env::args_os().skip(1)).and_then(call) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("error: {error:#}");
            ExitCode::FAILURE
        }
    }
}

fn call(call: Call) -> Result<()> {
    let mut steps = Steps::new();
    match call {
        Call::Help => {
            print!("{}", args::HELP);
            Ok(())
        }
        Call::Host { dir, port, at } => {
            let dir = match dir {
                Some(dir) => dir,
                None => Folders::find()?.dist(),
            };
            host::host(&dir, port, &at)
        }
        Call::Serve { port } => {
            let folders = Folders::find()?;
            let compiler = steps.run("find the compiler", || pave::pave(&folders.target))?;
            let dir = dist::dev(&folders, &compiler, &mut steps)?;
            host::host(&dir, port.unwrap_or_else(host::usual_port), "/")
        }
        Call::Dist { stamp, out } => {
            let folders = Folders::find()?;
            let compiler = steps.run("find the compiler", || pave::pave(&folders.target))?;
            let out = out.unwrap_or_else(|| folders.dist());
            let site = dist::dist(&folders, &compiler, &mut steps, stamp.as_deref(), &out)?;
            println!("build {} in {}", site.build, out.display());
            Ok(())
        }
        Call::Test { all } => test::test(&Folders::find()?, all),
        Call::Measure { solver } => measure::measure(&Folders::find()?, solver),
    }
}
