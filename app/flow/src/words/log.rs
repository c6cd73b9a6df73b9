//! Records, and why one was refused.

use tussock_core::log::bodies::{Chip, JobAnswer, LabelBasis, Quarters, Role};
use tussock_core::log::{Added, Allowed, Form, Kind, Known, LogError, Problem, Shape};

/// Words for records.
pub trait LogWords {
    /// Why a record, a file or a case was refused: record, field, value, what is allowed.
    fn log_error(&self, error: &LogError) -> String;
    /// What cannot be read from a record.
    fn record_problem(&self, problem: &Problem) -> String;
    /// What a field allows: "a whole number from 400 to 3000".
    fn allowed(&self, allowed: &Allowed) -> String;
    /// How a text must be built.
    fn form(&self, form: Form) -> &'static str;
    /// What kind of value: "a text".
    fn shape(&self, shape: Shape) -> &'static str;
    /// A kind of record: "Weight".
    fn record_kind(&self, kind: &Kind) -> String;
    /// How far a record is known: "seen".
    fn known(&self, known: Known) -> &'static str;
    /// What became of a version that was added.
    fn added(&self, added: Added) -> &'static str;
    /// A chip of the weather.
    fn chip(&self, chip: Chip) -> &'static str;
    /// What became of a job.
    fn job_answer(&self, answer: JobAnswer) -> &'static str;
    /// How much is left, by eye.
    fn quarters(&self, quarters: Quarters) -> &'static str;
    /// What a person is here.
    fn role(&self, role: Role) -> &'static str;
    /// What the shares on a label are of.
    fn label_basis(&self, basis: LabelBasis) -> &'static str;
}
