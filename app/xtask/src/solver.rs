//! How long the solver of the core takes in Chromium, beside HiGHS in the same page, against its bars.

use std::fmt::Write as _;

use anyhow::{Context as _, Result};
use serde_json::Value;

use crate::bundle::{self, Make};
use crate::cases::{self, SCRIPT};
use crate::compiler::Compiler;
use crate::folders::Folders;
use crate::node::{self, Node};
use crate::progress::Steps;
use crate::{chromium, run};

/// What a solve of 30 foods and 30 limits may take, in milliseconds.
const MOST: f64 = 1.0;
/// What it may take of the time of HiGHS.
const SHARE: f64 = 0.2;

/// Builds the core for a page as the app is built for hosting, times it there, and prints what was found. Returns the
/// names of the bars that were missed.
///
/// # Errors
/// When a tool fails or the two solvers do not agree.
pub(crate) fn measure(
    folders: &Folders,
    compiler: &Compiler,
    steps: &mut Steps,
) -> Result<Vec<&'static str>> {
    let node = steps.run("node and npm packages", || {
        let node = Node::find(folders)?;
        node::install_packages(folders, &node)?;
        Ok(node)
    })?;
    let browser = steps.run("browser", || chromium::find(folders, &node))?;
    let page = steps.run("build the solver (web)", || {
        let out = folders.kept("solver");
        cases::page(compiler, Make::Web, &out)?;
        let wasm = out.join(format!("{SCRIPT}_bg.wasm"));
        let small = bundle::optimise(folders, compiler, &node, "solver.wasm", &wasm)?;
        std::fs::copy(small, wasm)?;
        Ok(out)
    })?;
    let answer = steps.run("solver", || {
        let mut timing = node.command();
        timing
            .current_dir(folders.e2e())
            .arg("measure/solver.mjs")
            .arg(&page)
            .arg(&browser);
        let (answer, ended) = run::echoed(&mut timing)?;
        ended.map(|()| answer)
    })?;
    let found = Found::read(&answer)?;
    print!("{}", found.table());
    Ok(found.missed())
}

/// Medians of one size, in milliseconds a solve.
#[derive(Debug, PartialEq)]
struct Size {
    name: String,
    ours: f64,
    highs: f64,
}

impl Size {
    fn read(value: &Value) -> Result<Self> {
        let number = |key: &str| {
            let number = value.get(key).and_then(Value::as_f64);
            number.with_context(|| format!("the page gave no `{key}`"))
        };
        let (foods, limits, doses) = (number("foods")?, number("limits")?, number("doses")?);
        let doses = if doses > 0.0 {
            format!(", {doses} in whole doses")
        } else {
            String::new()
        };
        Ok(Self {
            name: format!("{foods} foods, {limits} limits{doses}"),
            ours: number("ours")?,
            highs: number("highs")?,
        })
    }
}

/// What the page found.
#[derive(Debug, PartialEq)]
struct Found {
    /// The size that has bars; HiGHS is as it comes, with its model kept.
    main: Size,
    /// The same by HiGHS without its presolve, and from text each time, in milliseconds.
    others: [(&'static str, f64); 2],
    /// How time grows.
    sizes: Vec<Size>,
}

impl Found {
    fn read(answer: &str) -> Result<Self> {
        let value: Value = serde_json::from_str(answer)?;
        let get = |key: &str| {
            let part = value.get(key);
            part.with_context(|| format!("the page gave no `{key}`"))
        };
        let mut sizes = Vec::new();
        for key in ["growth", "doses"] {
            let list = get(key)?.as_array();
            for size in list.with_context(|| format!("`{key}` is no list"))? {
                sizes.push(Size::read(size)?);
            }
        }
        let main = get("main")?;
        let other = |key: &str| {
            let number = main.get(key).and_then(Value::as_f64);
            number.with_context(|| format!("the page gave no `{key}`"))
        };
        Ok(Self {
            main: Size::read(main)?,
            others: [
                ("HiGHS without presolve (ms)", other("plain")?),
                ("HiGHS from text (ms)", other("text")?),
            ],
            sizes,
        })
    }

    /// What each bar is of, its value, and what it may be at most.
    fn bars(&self) -> [(&'static str, f64, f64); 2] {
        [
            ("solver (ms)", self.main.ours, MOST),
            (
                "solver, of the time of HiGHS",
                self.main.ours / self.main.highs,
                SHARE,
            ),
        ]
    }

    fn missed(&self) -> Vec<&'static str> {
        let bars = self.bars().into_iter();
        // A value that is no number is under no bar.
        bars.filter(|(_, value, most)| value.is_nan() || value > most)
            .map(|(name, ..)| name)
            .collect()
    }

    fn table(&self) -> String {
        let mut text = format!("\n{:<38}  {:>9}  bar\n", self.main.name, "median");
        for (name, value, most) in self.bars() {
            let _ = writeln!(text, "{name:<38}  {value:>9.3}  at most {most}");
        }
        let highs = [("HiGHS (ms)", self.main.highs)];
        for (name, value) in highs.iter().chain(&self.others) {
            let _ = writeln!(text, "{name:<38}  {value:>9.3}");
        }
        for name in self.missed() {
            let _ = writeln!(text, "MISSED: {name}");
        }
        let heads = ["ours", "HiGHS", "share"];
        let [ours, highs, share] = heads;
        let _ = writeln!(
            text,
            "\n{:<38}  {ours:>9}  {highs:>9}  {share:>9}",
            "median (ms)"
        );
        for Size { name, ours, highs } in &self.sizes {
            let share = ours / highs;
            let _ = writeln!(text, "{name:<38}  {ours:>9.3}  {highs:>9.3}  {share:>9.3}");
        }
        text
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn answer(ours: f64, highs: f64) -> String {
        let size = |foods: u32, doses: u32| {
            serde_json::json!({
                "foods": foods, "limits": 30, "doses": doses, "ours": ours, "highs": highs, "plain": 0.4, "text": 9,
            })
        };
        serde_json::json!({
            "main": size(30, 0), "growth": [size(10, 0), size(200, 0)], "doses": [size(30, 20)],
        })
        .to_string()
    }

    #[test]
    fn at_its_bars_it_passes() {
        let found = Found::read(&answer(1.0, 5.0)).unwrap();
        assert_eq!(found.missed(), Vec::<&str>::new());
        let table = found.table();
        for words in [
            "at most 0.2",
            "from text",
            "200 foods, 30 limits ",
            "30 foods, 30 limits, 20 in whole doses",
        ] {
            assert!(table.contains(words), "{table}");
        }
    }

    #[test]
    fn a_missed_bar_is_named() {
        let slow = Found::read(&answer(1.001, 6.0)).unwrap();
        assert_eq!(slow.missed(), ["solver (ms)"]);
        assert!(slow.table().contains("MISSED: solver (ms)"));
        let beside = Found::read(&answer(0.5, 2.4)).unwrap();
        assert_eq!(beside.missed(), ["solver, of the time of HiGHS"]);
        let nothing = Found::read(&answer(0.0, 0.0)).unwrap();
        assert_eq!(nothing.missed(), ["solver, of the time of HiGHS"]);
    }

    #[test]
    fn an_answer_with_a_hole_is_an_error() {
        assert!(Found::read("{}").is_err());
        assert!(Found::read(&answer(1.0, 5.0).replace("ours", "theirs")).is_err());
    }
}
