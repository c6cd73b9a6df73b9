//! Health as it is stored inside an animal.

use crate::animal::{
    Answer, Appetite, Handful, Health, Insulin, InsulinTest, Laminitis, Ppid, Teeth, VetFlag,
};
use crate::log::stored::{fields, tagged, words};

words!(Answer { Yes = "yes", No = "no", NotKnown = "not_known" });
words!(Ppid {
    Treated = "treated",
    Untreated = "untreated",
    Clear = "clear",
    NotKnown = "not_known",
});
words!(Teeth { Good = "good", Poor = "poor", NotKnown = "not_known" });
words!(Handful { Eaten = "eaten", Refused = "refused", NotTried = "not_tried" });

tagged!(Laminitis, by "state" {
    Never = "never" {},
    Ever = "ever" { last: last },
    Active = "active" {},
    NotKnown = "not_known" {},
});
fields!(InsulinTest {
    dysregulated,
    by,
    on,
    test
});
tagged!(Insulin, by "state" {
    Tested = "tested" { 0: test },
    NotKnown = "not_known" {},
});
tagged!(Appetite, by "state" {
    Eating = "eating" {},
    Off = "off" { last_seen_eating: last_seen_eating, handful: handful, dull: dull },
    NotKnown = "not_known" {},
});
tagged!(VetFlag, by "flag" {
    PainRelief = "pain_relief" {},
    Sglt2Inhibitor = "sglt2_inhibitor" {},
    InsulinDrug = "insulin_drug" {},
    Corticosteroid = "corticosteroid" { last: last },
    TrimmedOrShod = "trimmed_or_shod" { on: on },
    FootsoreAfterTrims = "footsore_after_trims" {},
    BoxRest = "box_rest" {},
    GotAtGrain = "got_at_grain" { at: at },
    EscapedOntoGrass = "escaped_onto_grass" { at: at },
    Sick = "sick" {},
    SurgeryOrTransport = "surgery_or_transport" { on: on },
    Lame = "lame" {},
});
fields!(Health {
    laminitis,
    insulin,
    ppid,
    teeth,
    appetite,
    native_or_cob,
    flags,
});
