//! The last word.

use super::Said;
use tussock_core::safety::{Caution, Meanwhile, Refusal, VetUrgency};

/// Words for cautions and refusals.
pub trait SafetyWords {
    /// A caution: one sentence with what to do, and why.
    fn caution(&self, caution: &Caution) -> Said;
    /// Why there is no plan, short enough for the head of a screen: at most 44 characters.
    fn refusal_head(&self, refusal: &Refusal) -> &'static str;
    /// Why there is no plan: one sentence, and why.
    fn refusal(&self, refusal: &Refusal) -> Said;
    /// What to do until there is a plan.
    fn meanwhile(&self, meanwhile: &Meanwhile) -> Said;
    /// How soon the vet is rung: "Ring the vet now".
    fn vet(&self, urgency: VetUrgency) -> &'static str;
}
