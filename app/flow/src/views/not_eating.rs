//! An animal that will not eat: what is known of it for the vet, and what stops it by what was just seen.

use super::beside::Stop;
use super::changeover::{Changeover, of_plan};
use super::ledger::{Week, needs as ledger_needs, week};
use super::{details, horses};
use crate::rows::Range;
use crate::shelf::Shelf;
use tussock_core::animal::{Animal, AnimalId, Ppid, VetFlag, YardId};
use tussock_core::assess::{DatedWeight, best};
use tussock_core::log::bodies::{AnimalV2, AppetiteV1, Role, YardV2};
use tussock_core::log::{Body, Gathered, Kind, Record, Wish, gather};
use tussock_core::round::Subject;
use tussock_core::safety::published::OFF_FEED_HOURS;
use tussock_core::safety::{Normal, Offered, Vital, WillNotEat, will_not_eat};
use tussock_core::sources::RecordId;
use tussock_core::units::{Instant, LocalDate, Span, Zone};

/// The most persons that are asked for.
const PERSONS: u32 = 200;

/// What the screen asks the disk for.
pub fn needs(animal: &AnimalId, now: Instant) -> Vec<Range> {
    let mut ranges = horses::one_needs(animal);
    ranges.extend(ledger_needs(now));
    ranges.push(horses::kind_of_limit(&Kind::Person, PERSONS));
    ranges
}

/// Who is rung.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Vet {
    /// Vet and practice, as the last vet's word of this animal names them.
    pub named: Option<String>,
    /// The number, as it was written down.
    pub telephone: Option<String>,
}

/// A number as a telephone dials it; `None` where there are too few digits to be one.
pub fn dial(telephone: &str) -> Option<String> {
    let text = telephone.trim();
    let digits: String = text.chars().filter(char::is_ascii_digit).collect();
    let plus = if text.starts_with('+') { "+" } else { "" };
    (2 < digits.len()).then(|| format!("tel:{plus}{digits}"))
}

/// An animal that will not eat, with what the vet will ask.
#[derive(Clone, Debug, PartialEq)]
pub struct NotEating {
    /// The animal.
    pub animal: Animal,
    /// The animal as it is stored.
    pub held: AnimalV2,
    /// The local day.
    pub today: LocalDate,
    /// The weight that holds.
    pub weight: Option<DatedWeight>,
    /// What it ate in the last seven days.
    pub week: Option<Week>,
    /// Who is rung.
    pub vet: Vet,
    /// The yard it stands in.
    pub yard_id: YardId,
    /// The yard, where it is written down.
    pub yard: Option<(RecordId, YardV2)>,
    /// The drugs it is said to be on.
    pub drugs: Vec<VetFlag>,
    /// It is treated for PPID.
    pub ppid_treated: bool,
    /// Hay that stands in for what its plan names.
    pub changed: Vec<Changeover>,
    /// The last handful and readings, while they are not older than the latest wait.
    pub last: Option<(Instant, AppetiteV1)>,
    gathered: Gathered,
}

impl NotEating {
    /// What the handful says.
    pub fn found(&self, offered: &Offered, now: Instant) -> WillNotEat {
        will_not_eat(&self.animal, offered, now)
    }

    /// What stops it with what was just said, the most urgent first; what else stands counts too.
    pub fn stop(&self, offered: &Offered, now: Instant) -> Option<Stop> {
        let mut seen = self.gathered.clone();
        seen.now = now;
        if let Some(appetite) = self.found(offered, now).appetite(offered) {
            seen.animal.health.appetite = appetite;
        }
        let first = seen.stops().into_iter().next();
        first.map(|(why, vet)| Stop::Vet(why, vet))
    }

    /// What is usual at rest for this animal.
    pub fn normal(&self, vital: Vital) -> Option<Normal> {
        vital.normal(&self.animal, self.today)
    }

    /// The reading of a vital that was saved last.
    pub fn reading(&self, vital: Vital) -> Option<f64> {
        self.last.as_ref().and_then(|(_, body)| body.vital(vital))
    }
}

/// An animal that will not eat; `None` when it is not there.
pub fn not_eating(
    shelf: &Shelf,
    animal: &AnimalId,
    now: Instant,
    zone: &impl Zone,
) -> Option<NotEating> {
    let records: Vec<&Record> = shelf
        .records()
        .filter(|record| record.subject.id() == animal.as_str())
        .collect();
    let held = details::held(shelf, animal)?;
    let gathered = gather(&records, animal, now, zone, &Wish::default())?;
    let today = gathered.day;
    let health = &gathered.animal.health;
    let is_drug = |flag: &&VetFlag| {
        matches!(
            flag,
            VetFlag::PainRelief
                | VetFlag::Sglt2Inhibitor
                | VetFlag::InsulinDrug
                | VetFlag::Corticosteroid { .. }
        )
    };
    let plan = shelf.newest(&Kind::Plan, animal.as_str());
    let changed = match plan.and_then(|record| Body::read(record).ok()) {
        Some(Body::Plan(plan)) => of_plan(shelf, animal, &plan, today),
        _ => Vec::new(),
    };
    let yard = yard(shelf, animal);
    let oldest = now - Span::hours(*OFF_FEED_HOURS);
    let last = shelf
        .newest(&Kind::Appetite, animal.as_str())
        .filter(|record| oldest < record.at && record.at <= now)
        .and_then(|record| match Body::read(record) {
            Ok(Body::Appetite(body)) => Some((record.at, body)),
            _ => None,
        });
    Some(NotEating {
        today,
        weight: best(&gathered.weights, today).cloned(),
        week: week(shelf, &Subject::Animal(animal.clone()), now, zone),
        vet: vet(shelf, animal),
        yard_id: shelf.get(animal.as_str())?.yard.clone(),
        yard,
        drugs: health.flags.iter().filter(is_drug).cloned().collect(),
        ppid_treated: health.ppid == Ppid::Treated,
        changed,
        last,
        held,
        animal: gathered.animal.clone(),
        gathered,
    })
}

/// Who is rung for an animal.
pub(crate) fn vet(shelf: &Shelf, animal: &AnimalId) -> Vet {
    let yard = yard(shelf, animal);
    Vet {
        named: named(shelf, animal),
        telephone: telephone(shelf, yard.as_ref().map(|(_, yard)| yard)),
    }
}

/// The yard that an animal stands in.
fn yard(shelf: &Shelf, animal: &AnimalId) -> Option<(RecordId, YardV2)> {
    let yard = &shelf.get(animal.as_str())?.yard;
    let record = shelf.get(yard.as_str()).filter(|record| !record.gone)?;
    match Body::read(record) {
        Ok(Body::Yard(body)) => Some((record.id.clone(), body)),
        _ => None,
    }
}

/// The number of the yard's vet, else of a person who is a vet.
fn telephone(shelf: &Shelf, yard: Option<&YardV2>) -> Option<String> {
    let of_the_yard = yard.and_then(|yard| yard.vet_telephone.clone());
    let of_a_vet = || {
        shelf
            .bodies(&Kind::Person)
            .into_iter()
            .find_map(|(_, body)| match body {
                Body::Person(person) if person.role == Role::Vet => person.telephone,
                _ => None,
            })
    };
    of_the_yard
        .or_else(of_a_vet)
        .filter(|telephone| !telephone.trim().is_empty())
}

/// Vet and practice by the last vet's word of the animal.
fn named(shelf: &Shelf, animal: &AnimalId) -> Option<String> {
    match Body::read(shelf.newest(&Kind::VetWord, animal.as_str())?) {
        Ok(Body::VetWord(word)) => {
            let vet = word.vet.as_str();
            Some(match word.practice.trim() {
                "" => vet.to_owned(),
                practice => format!("{vet}, {practice}"),
            })
        }
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forms::not_eating::{Typed, Wrong, offered};
    use crate::views::beside::visit;
    use crate::views::test_yard::{add, after, animal, at, shelf_of, written, zone};
    use tussock_core::animal::{Answer, Appetite, Handful, Kind as AnimalKind};
    use tussock_core::log::bodies::VetWordV1;
    use tussock_core::safety::{LastAte, Refusal, VetUrgency};
    use tussock_core::units::parse::ParseError;

    fn id() -> AnimalId {
        AnimalId("moss".into())
    }

    fn seen(shelf: &Shelf, now: Instant) -> NotEating {
        not_eating(shelf, &id(), now, &zone()).unwrap()
    }

    fn said(last: LastAte, handful: Handful, dull: Answer, now: Instant) -> Offered {
        Offered {
            last_seen_eating: last.at(now, &zone()),
            handful: Some(handful),
            dull,
        }
    }

    fn save(shelf: &Shelf, typed: &Typed, offered: &Offered, now: Instant, record: &str) -> Shelf {
        let view = seen(shelf, now);
        let act = typed.act(&view, offered, now, record).unwrap();
        written(shelf, &act, now)
    }

    #[test]
    fn a_dull_pony_is_for_the_vet_now_on_the_screen_and_beside_it_and_the_readings_stand() {
        let shelf = shelf_of(&[add("moss", &animal("moss"), 0)]);
        let now = at(1);
        let dull = said(LastAte::Morning, Handful::Refused, Answer::Yes, now);
        let view = seen(&shelf, now);
        assert!(matches!(
            view.stop(&dull, now),
            Some(Stop::Vet(Refusal::OffFeed { .. }, VetUrgency::Now))
        ));
        let typed = Typed {
            temperature: "38,4".into(),
            pulse: "52".into(),
            telephone: "+44 1632 960 123".into(),
            vet: "The vet".into(),
            ..Typed::default()
        };
        let shelf = save(&shelf, &typed, &dull, now, "h");
        let beside = visit(&shelf, &id(), now, &zone()).unwrap();
        assert!(matches!(
            beside.stop,
            Some(Stop::Vet(Refusal::OffFeed { .. }, VetUrgency::Now))
        ));
        let view = seen(&shelf, now);
        assert_eq!(view.reading(Vital::Temperature), Some(38.4));
        assert_eq!(view.reading(Vital::Pulse), Some(52.0));
        assert_eq!(view.reading(Vital::Breaths), None);
        assert_eq!(view.vet.telephone.as_deref(), Some("+44 1632 960 123"));
        assert_eq!(dial("+44 1632 960 123").unwrap(), "tel:+441632960123");
        assert_eq!(dial("no"), None);
        // The next day they are no readings of that day any more; the stop stands.
        let view = seen(&shelf, at(2));
        assert_eq!(view.last, None);
        let nothing = offered(&view, |_| String::new(), at(2), &zone());
        assert!(view.stop(&nothing, at(2)).is_some());
    }

    #[test]
    fn a_horse_that_eats_when_offered_is_fed_and_rung_about_and_that_eases_a_stop() {
        let mut moss = animal("moss");
        moss.kind = AnimalKind::Horse;
        moss.health.appetite = Appetite::Off {
            last_seen_eating: Some(at(0)),
            handful: Handful::Refused,
            dull: Answer::No,
        };
        let shelf = shelf_of(&[add("moss", &moss, 1)]);
        let now = at(1);
        assert!(matches!(
            visit(&shelf, &id(), now, &zone()).unwrap().stop,
            Some(Stop::Vet(_, VetUrgency::Now))
        ));
        let eats = said(LastAte::Evening, Handful::Eaten, Answer::No, now);
        let shelf = save(&shelf, &Typed::default(), &eats, now, "h");
        assert_eq!(
            visit(&shelf, &id(), now, &zone()).unwrap().stop,
            Some(Stop::Vet(Refusal::AteWhenOffered, VetUrgency::ThisMorning))
        );
    }

    #[test]
    fn this_hay_alone_leaves_no_stop() {
        let shelf = shelf_of(&[add("moss", &animal("moss"), 0)]);
        let now = at(1);
        let eats = said(LastAte::Now, Handful::Eaten, Answer::No, now);
        assert_eq!(seen(&shelf, now).found(&eats, now), WillNotEat::ThisHay);
        let shelf = save(&shelf, &Typed::default(), &eats, now, "h");
        let view = seen(&shelf, now);
        assert_eq!(view.animal.health.appetite, Appetite::Eating);
        assert_eq!(view.stop(&eats, now), None);
        assert!(view.last.is_some());
    }

    #[test]
    fn nothing_is_saved_before_a_handful_but_the_number() {
        let shelf = shelf_of(&[add("moss", &animal("moss"), 0)]);
        let now = at(1);
        let view = seen(&shelf, now);
        let nothing = offered(&view, |_| String::new(), now, &zone());
        assert_eq!(view.stop(&nothing, now), None);
        let act = |typed: &Typed| typed.act(&view, &nothing, now, "h");
        assert_eq!(act(&Typed::default()), Err(vec![Wrong::Handful]));
        let number = Typed {
            telephone: "01632 960123".into(),
            vet: "The vet".into(),
            ..Typed::default()
        };
        assert!(act(&number).is_ok());
        let wild = Typed {
            temperature: "3.84".into(),
            breaths: "x".into(),
            telephone: "ring her".into(),
            ..Typed::default()
        };
        let wrong = act(&wild).unwrap_err();
        assert!(wrong.iter().any(|wrong| matches!(
            wrong,
            Wrong::Vital(Vital::Temperature, ParseError::OutOfRange(_))
        )));
        assert!(wrong.contains(&Wrong::Telephone));
        assert!(matches!(wrong.last(), Some(Wrong::Handful)));
    }

    #[test]
    fn the_sheet_names_the_vet_of_the_last_word_and_the_drugs() {
        let mut moss = animal("moss");
        moss.health.flags = vec![VetFlag::PainRelief, VetFlag::BoxRest];
        let word = VetWordV1::of(&tussock_core::animal::VetWord {
            animal: id(),
            permit: tussock_core::animal::VetPermit::Work,
            vet: "A. Marsh".into(),
            practice: "Hill practice".into(),
            given: "2026-05-01".parse().unwrap(),
            how: "by telephone".into(),
            expires: "2026-06-01".parse().unwrap(),
            written: None,
        })
        .unwrap();
        let shelf = shelf_of(&[add("moss", &moss, 0)]);
        let shelf = after(&shelf, &[("w", "moss", Body::VetWord(word), 0)]);
        let view = seen(&shelf, at(1));
        assert_eq!(view.vet.named.as_deref(), Some("A. Marsh, Hill practice"));
        assert_eq!(view.vet.telephone, None);
        assert_eq!(view.drugs, [VetFlag::PainRelief]);
    }
}
