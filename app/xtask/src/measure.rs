//! `cargo xtask measure`: what Lighthouse finds in the folder to host, on a phone, and how long the solver takes.

use std::io::{BufRead as _, BufReader};
use std::path::Path;
use std::process::{Child, Command, Stdio};

use anyhow::{Context as _, Result, bail};

use crate::compiler::Compiler;
use crate::folders::Folders;
use crate::median::medians;
use crate::node::Node;
use crate::progress::Steps;
use crate::{chromium, dist, pave, run, solver};

/// Visits; the medians of their values count.
const VISITS: usize = 5;

/// Builds, hosts and visits the folder, then times the solver, or times it alone, and prints what was found beside its
/// bars. The machine should be idle.
///
/// # Errors
/// When a bar is missed or a tool fails.
pub(crate) fn measure(folders: &Folders, solver_alone: bool) -> Result<()> {
    let mut steps = Steps::new();
    let compiler = steps.run("find the compiler", || pave::pave(&folders.target))?;
    let mut missed = Vec::new();
    if !solver_alone {
        missed.extend(visits(folders, &compiler, &mut steps)?);
    }
    missed.extend(solver::measure(folders, &compiler, &mut steps)?);
    if !missed.is_empty() {
        bail!("{} missed", missed.join(", "));
    }
    Ok(())
}

/// What Lighthouse finds; returns the names of the bars that were missed.
fn visits(folders: &Folders, compiler: &Compiler, steps: &mut Steps) -> Result<Vec<&'static str>> {
    let out = folders.dist();
    dist::dist(folders, compiler, steps, None, &out)?;
    let node = Node::find(folders)?;
    let browser = steps.run("browser", || chromium::find(folders, &node))?;
    let host = Host::start(&folders.tool, &out)?;
    let mut answers = Vec::new();
    for visit in 1..=VISITS {
        answers.push(steps.run(&format!("visit {visit} of {VISITS}"), || {
            let mut lighthouse = node.command();
            lighthouse
                .current_dir(folders.e2e())
                .arg("measure/lighthouse.mjs")
                .arg(&host.address)
                .arg(&browser);
            let (answer, ended) = run::echoed(&mut lighthouse)?;
            ended.map(|()| answer)
        })?);
    }
    let medians = medians(&answers)?;
    print!("{}", medians.table());
    Ok(medians.missed())
}

/// This tool as a server of its own, ended with this value.
struct Host {
    child: Child,
    address: String,
}

impl Host {
    fn start(tool: &Path, dir: &Path) -> Result<Self> {
        let mut child = Command::new(tool)
            .arg("host")
            .arg("--dir")
            .arg(dir)
            .stdout(Stdio::piped())
            .spawn()?;
        let mut line = String::new();
        if let Some(out) = child.stdout.take() {
            BufReader::new(out).read_line(&mut line)?;
        }
        let address = line.trim().strip_prefix("listening on ").map(str::to_owned);
        let mut host = Self {
            child,
            address: String::new(),
        };
        host.address = address.context("the server did not say where it listens")?;
        Ok(host)
    }
}

impl Drop for Host {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}
