//! Weight, condition and crest.

use super::Said;
use tussock_core::assess::{
    Aim, AssessError, ConditionScale, Crest, CrestFlag, Equation, Fallback, Finding, LengthKind,
    Measure, MeasuredType, Refused, Ribs, ScaleInstrument, ScaleReason, Site, WeightMethod,
};

/// Words for what is measured and felt on the animal.
pub trait AssessWords {
    /// What to know beside a weight, a score or a target.
    fn assess_finding(&self, finding: &Finding) -> Said;
    /// Why a scale weight is wanted.
    fn scale_reason(&self, reason: ScaleReason) -> String;
    /// Why the closer equation was not used.
    fn fallback(&self, fallback: Fallback) -> String;
    /// Why a reading or a score was refused.
    fn assess_error(&self, error: &AssessError) -> String;
    /// Why there is no equation or no target.
    fn not_assessed(&self, refused: Refused) -> String;
    /// "Heart girth".
    fn measure(&self, measure: Measure) -> &'static str;
    /// Where the tape goes.
    fn where_to_tape(&self, measure: Measure) -> &'static str;
    /// "Length around the buttock".
    fn length_kind(&self, kind: LengthKind) -> &'static str;
    /// From where to where.
    fn where_to_lay(&self, kind: LengthKind) -> &'static str;
    /// "Animal scale".
    fn scale_instrument(&self, instrument: ScaleInstrument) -> &'static str;
    /// How a weight was found: "by tape: girth and length".
    fn weight_method(&self, method: WeightMethod) -> String;
    /// "girth and length".
    fn equation(&self, equation: Equation) -> &'static str;
    /// The body types with an equation of their own.
    fn measured_type(&self, measured: MeasuredType) -> &'static str;
    /// What a target is for.
    fn aim(&self, aim: Aim) -> &'static str;
    /// "1 to 9".
    fn condition_scale(&self, scale: ConditionScale) -> &'static str;
    /// "Tail head".
    fn site(&self, site: Site) -> &'static str;
    /// Where to lay the hand.
    fn lay_hand(&self, site: Site) -> &'static str;
    /// What the hand feels at a whole step of a site: 1 to 9, or 0 to 5. `None` for a step that the scale does not have.
    fn step(&self, site: Site, scale: ConditionScale, step: u8) -> Option<&'static str>;
    /// What a crest of this score looks and feels like.
    fn crest(&self, crest: Crest) -> &'static str;
    /// What a crest says.
    fn crest_flag(&self, flag: CrestFlag) -> Said;
    /// One answer about the ribs.
    fn ribs(&self, ribs: Ribs) -> &'static str;
}
