//! Tables of values that the core must meet, and how a row is held against a formula.
//!
//! A table is `data/<work>.csv`. Its file stem names the publication, in snake case where it is a variant of
//! [`tussock_core::sources::Work`] (`martinson_2014.csv`), otherwise the program or publication itself (`pint.csv`).
//! Line one is `# ` and the citation. The header is
//!
//! ```text
//! id,origin,mark,formula,inputs,expected,tolerance,unit
//! ```
//!
//! - `id`: the id of the check in the notes it was taken from (`N31`), once a table.
//! - `origin`: where the expected value comes from: `print`, `program`, `worked_out` or `memory`.
//! - `mark`: how far it can be trusted, as [`tussock_core::sources::Mark`] in snake case.
//! - `formula`: the name of a formula that a room module of the test binary offers.
//! - `inputs`: `key=value;key=value`. An input that the formula does not read is an error.
//! - `expected`: a number, or `refused` where the formula must refuse.
//! - `tolerance`: an absolute number in the same unit, or a percentage of the expected value with a `%`. Empty for
//!   `refused` only.
//! - `unit`: of the expected value, for the reader.

mod inputs;

pub use inputs::Inputs;

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

/// A formula under test: reads its inputs and gives a number in the unit of the row, or says why it refused.
pub type Formula = fn(&Inputs) -> Result<f64, String>;

/// Formulas by name, as a room module of the test binary offers them.
pub type Formulas = Vec<(&'static str, Formula)>;

/// How many rows a room answers for in a table: file stem and count.
pub type RowCounts = Vec<(&'static str, usize)>;

/// Where the expected value of a row comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Origin {
    /// Read in the publication.
    Print,
    /// Made by another program.
    Program,
    /// Worked out by hand or by script from a published formula.
    WorkedOut,
    /// From memory.
    Memory,
}

impl Origin {
    fn read(text: &str) -> Result<Self, String> {
        match text {
            "print" => Ok(Self::Print),
            "program" => Ok(Self::Program),
            "worked_out" => Ok(Self::WorkedOut),
            "memory" => Ok(Self::Memory),
            _ => Err(format!("unknown origin {text:?}")),
        }
    }

    /// Whether the value was made without the formula under test.
    pub const fn is_independent(self) -> bool {
        matches!(self, Self::Print | Self::Program)
    }
}

/// The marks of [`tussock_core::sources::Mark`] as they stand in a table.
const MARKS: [&str; 5] = [
    "published",
    "worked_out",
    "from_memory",
    "common_practice",
    "ours",
];

/// What a row expects of its formula.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Expected {
    /// A number, met within an absolute tolerance.
    Number {
        /// The expected value.
        value: f64,
        /// The largest allowed distance from it.
        tolerance: f64,
    },
    /// A refusal.
    Refused,
}

/// One row of a table.
#[derive(Debug)]
pub struct Row {
    /// The id of the check.
    pub id: String,
    /// Where the expected value comes from.
    pub origin: Origin,
    /// How far it can be trusted, in snake case.
    pub mark: String,
    /// The name of the formula.
    pub formula: String,
    /// The inputs.
    pub inputs: Inputs,
    /// What is expected.
    pub expected: Expected,
    /// The unit, for the reader.
    pub unit: String,
}

/// One table: one publication or program.
#[derive(Debug)]
pub struct Table {
    /// The file stem.
    pub work: String,
    /// The citation of line one.
    pub citation: String,
    /// The rows in the order of the file.
    pub rows: Vec<Row>,
}

impl Table {
    /// Reads a table from its text; errors name the work and the row.
    pub fn parse(work: &str, text: &str) -> Result<Self, String> {
        let (first, rest) = text
            .split_once('\n')
            .ok_or_else(|| format!("{work}: the table is empty"))?;
        let citation = first
            .strip_prefix("# ")
            .map(str::trim)
            .filter(|c| !c.is_empty())
            .ok_or_else(|| format!("{work}: line one is not `# <citation>`"))?;
        let mut reader = csv::Reader::from_reader(rest.as_bytes());
        let header: Vec<String> = reader
            .headers()
            .map_err(|e| format!("{work}: {e}"))?
            .iter()
            .map(str::to_owned)
            .collect();
        if header != HEADER {
            return Err(format!("{work}: the header is not {}", HEADER.join(",")));
        }
        let mut rows = Vec::new();
        let mut ids = BTreeSet::new();
        for record in reader.records() {
            let record = record.map_err(|e| format!("{work}: {e}"))?;
            let cells: Vec<&str> = record.iter().map(str::trim).collect();
            let row = Row::read(&cells).map_err(|e| format!("{work} {}: {e}", cells.join(",")))?;
            if !ids.insert(row.id.clone()) {
                return Err(format!("{work}: the id {} stands twice", row.id));
            }
            rows.push(row);
        }
        Ok(Self {
            work: work.to_owned(),
            citation: citation.to_owned(),
            rows,
        })
    }

    /// Whether the table stands for a publication: a program's output alone does not.
    pub fn is_publication(&self) -> bool {
        self.rows.iter().any(|row| row.origin != Origin::Program)
    }
}

const HEADER: [&str; 8] = [
    "id",
    "origin",
    "mark",
    "formula",
    "inputs",
    "expected",
    "tolerance",
    "unit",
];

impl Row {
    fn read(cells: &[&str]) -> Result<Self, String> {
        let [id, origin, mark, formula, inputs, expected, tolerance, unit] = cells else {
            return Err(format!("{} cells, not 8", cells.len()));
        };
        if id.is_empty() || formula.is_empty() {
            return Err("a row needs an id and a formula".to_owned());
        }
        if !MARKS.contains(mark) {
            return Err(format!("unknown mark {mark:?}"));
        }
        Ok(Self {
            id: (*id).to_owned(),
            origin: Origin::read(origin)?,
            mark: (*mark).to_owned(),
            formula: (*formula).to_owned(),
            inputs: Inputs::parse(inputs)?,
            expected: Expected::read(expected, tolerance)?,
            unit: (*unit).to_owned(),
        })
    }

    /// Holds the row against its formula; `Ok` when it is met.
    pub fn check(&self, formula: Formula) -> Result<(), String> {
        let answer = formula(&self.inputs);
        if let Some(fault) = self.inputs.first_fault() {
            return Err(fault);
        }
        let number = match (&answer, self.expected) {
            (Err(_), Expected::Refused) => return Ok(()),
            (Err(reason), Expected::Number { .. }) => return Err(format!("refused: {reason}")),
            (Ok(number), Expected::Refused) => {
                return Err(format!("gave {number} where it must refuse"));
            }
            (Ok(number), Expected::Number { .. }) => *number,
        };
        let unread = self.inputs.never_read();
        if !unread.is_empty() {
            return Err(format!("the formula never reads {}", unread.join(", ")));
        }
        match self.expected {
            Expected::Number { value, tolerance } if (number - value).abs() <= tolerance => Ok(()),
            Expected::Number { value, tolerance } => Err(format!(
                "gave {number}, expected {value} within {tolerance} {}",
                self.unit
            )),
            Expected::Refused => Ok(()),
        }
    }
}

impl Expected {
    fn read(expected: &str, tolerance: &str) -> Result<Self, String> {
        if expected == "refused" {
            return if tolerance.is_empty() {
                Ok(Self::Refused)
            } else {
                Err("a refusal has no tolerance".to_owned())
            };
        }
        let finite = |text: &str| {
            text.trim()
                .parse::<f64>()
                .ok()
                .filter(|n| n.is_finite())
                .ok_or_else(|| format!("{text:?} is not a number"))
        };
        let value = finite(expected)?;
        let tolerance = match tolerance.strip_suffix('%') {
            Some(percent) => value.abs() * finite(percent)? / 100.0,
            None => finite(tolerance)?,
        };
        if tolerance < 0.0 {
            return Err("a tolerance is not negative".to_owned());
        }
        Ok(Self::Number { value, tolerance })
    }
}

/// The folder of this crate.
pub fn crate_root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

/// All tables under `data/`, by name.
pub fn tables() -> Result<Vec<Table>, String> {
    let folder = crate_root().join("data");
    let mut files: Vec<PathBuf> = fs::read_dir(&folder)
        .map_err(|e| format!("{}: {e}", folder.display()))?
        .map(|entry| entry.map(|e| e.path()).map_err(|e| e.to_string()))
        .collect::<Result<_, _>>()?;
    files.retain(|path| path.extension().is_some_and(|ext| ext == "csv"));
    files.sort();
    files
        .iter()
        .map(|path| {
            let work = path
                .file_stem()
                .and_then(|stem| stem.to_str())
                .ok_or_else(|| format!("{}: no name", path.display()))?;
            let text = fs::read_to_string(path).map_err(|e| format!("{work}: {e}"))?;
            Table::parse(work, &text)
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    const HEAD: &str = "# A work\nid,origin,mark,formula,inputs,expected,tolerance,unit\n";

    fn row(line: &str) -> Result<Row, String> {
        let mut table = Table::parse("a_work", &format!("{HEAD}{line}\n"))?;
        table.rows.pop().ok_or_else(|| "no row".to_owned())
    }

    fn double(inputs: &Inputs) -> Result<f64, String> {
        let value = inputs.number("x")?;
        if value < 0.0 {
            return Err("negative".to_owned());
        }
        Ok(2.0 * value)
    }

    #[test]
    fn a_row_is_met_missed_or_refused() {
        let check = |line: &str| row(line).unwrap().check(double);
        assert_eq!(check("A1,print,published,f,x=2,4,0.01,kg"), Ok(()));
        assert_eq!(check("A2,print,published,f,x=2,4.03,1%,kg"), Ok(()));
        assert!(check("A3,print,published,f,x=2,4.1,0.05,kg").is_err());
        assert_eq!(check("A4,print,published,f,x=-1,refused,,kg"), Ok(()));
        assert!(check("A5,print,published,f,x=1,refused,,kg").is_err());
        assert!(check("A6,print,published,f,x=-1,4,1,kg").is_err());
    }

    #[test]
    fn a_wrong_row_never_passes_as_a_refusal() {
        let check = |line: &str| row(line).unwrap().check(double);
        assert!(check("A1,print,published,f,y=1,refused,,kg").is_err());
        assert!(check("A2,print,published,f,x=one,refused,,kg").is_err());
        assert!(check("A3,print,published,f,x=2;y=1,4,1,kg").is_err());
    }

    #[test]
    fn a_table_is_read_strictly() {
        for line in [
            "A1,read,published,f,x=2,4,1,kg",
            "A1,print,sure,f,x=2,4,1,kg",
            "A1,print,published,,x=2,4,1,kg",
            "A1,print,published,f,x,4,1,kg",
            "A1,print,published,f,x=2;x=3,4,1,kg",
            "A1,print,published,f,x=2,four,1,kg",
            "A1,print,published,f,x=2,4,,kg",
            "A1,print,published,f,x=2,4,-1,kg",
            "A1,print,published,f,x=2,refused,1,kg",
            "A1,print,published,f,x=2,4,1",
            "A1,print,published,f,x=2,4,1,kg\nA1,print,published,f,x=2,4,1,kg",
        ] {
            assert!(row(line).is_err(), "{line}");
        }
        assert!(Table::parse("w", "id,origin\n").is_err());
        assert!(Table::parse("w", "# A work\nid,origin\n").is_err());
    }
}
