//! The horses' screens in English.

use super::English;
use crate::words::{HorsesWords, UnitWords};
use tussock_core::units::{Instant, LocalDate, Zone};

impl HorsesWords for English {
    fn horses(&self) -> &'static str {
        "Horses"
    }
    fn no_horse_yet(&self) -> &'static str {
        "No animal here yet"
    }
    fn how_many(&self, count: usize) -> String {
        if count == 1 {
            "1 animal".to_owned()
        } else {
            format!("{count} animals")
        }
    }
    fn add_an_animal(&self) -> &'static str {
        "Add an animal"
    }
    fn who_is_it(&self) -> &'static str {
        "Who is it?"
    }
    fn name(&self) -> &'static str {
        "Name"
    }
    fn what_is_it(&self) -> &'static str {
        "What is it?"
    }
    fn height_label(&self) -> &'static str {
        "Height at the withers"
    }
    fn height_hint(&self) -> &'static str {
        "Centimetres, or hands as 12.2 hh. May be left out."
    }
    fn born(&self) -> &'static str {
        "Born in"
    }
    fn born_hint(&self) -> &'static str {
        "The year, as 2014. May be left out."
    }
    fn save(&self) -> &'static str {
        "Save"
    }
    fn save_and_weigh(&self) -> &'static str {
        "Save, then weigh"
    }
    fn back(&self) -> &'static str {
        "Back"
    }
    fn saved(&self) -> &'static str {
        "Saved."
    }
    fn undo(&self) -> &'static str {
        "Undo"
    }
    fn not_saved(&self) -> &'static str {
        "Not saved. Nothing you typed is lost; try again."
    }
    fn name_wanted(&self) -> &'static str {
        "Type a name, so that the nets and jobs can say whose they are."
    }
    fn choice_wanted(&self) -> &'static str {
        "Choose one: the rules differ between kinds."
    }
    fn tape_or_scale(&self, name: &str) -> String {
        format!("Weigh {name}")
    }
    fn by_tape(&self) -> &'static str {
        "Tape"
    }
    fn by_scale(&self) -> &'static str {
        "Scale"
    }
    fn how_weighed(&self) -> &'static str {
        "With what?"
    }
    fn heart_girth(&self) -> &'static str {
        "Heart girth"
    }
    fn heart_girth_hint(&self) -> &'static str {
        "Round the chest just behind the elbow and over the withers, as it breathes out. Centimetres, or inches as 68 in."
    }
    fn length_label(&self) -> &'static str {
        "Length"
    }
    fn length_hint(&self, donkey: bool) -> &'static str {
        if donkey {
            "From the elbow to the pin bone. Without it the weight is less sure."
        } else {
            "From the point of the shoulder round to the point of the buttock. Without it the weight is less sure."
        }
    }
    fn scale_weight(&self) -> &'static str {
        "The scale shows"
    }
    fn save_weight(&self) -> &'static str {
        "Save weight"
    }
    fn weighs(&self, name: &str, kg: &str, either_way: &str) -> String {
        format!("{name}: {kg}, give or take {either_way}")
    }
    fn never_weighed(&self, name: &str) -> String {
        format!("{name} was never weighed")
    }
    fn weighed(&self, how: &str, day: &str) -> String {
        format!("{how}, {day}")
    }
    fn weigh(&self) -> &'static str {
        "Weigh"
    }
    fn no_dose(&self) -> &'static str {
        "No drug is dosed by this weight: the vet doses."
    }
    fn draft_from(&self, at: Instant, today: LocalDate, zone: &dyn Zone) -> String {
        let day = zone.to_local(at).date;
        let time = self.time_at(at, zone);
        if day == today {
            format!("As you left it at {time}.")
        } else {
            format!("As you left it on {} at {time}.", self.day(day))
        }
    }
    fn throw_draft_away(&self) -> &'static str {
        "Throw away"
    }
    fn opening(&self) -> &'static str {
        "Opening"
    }
    fn cannot_read(&self) -> &'static str {
        "The records cannot be read"
    }
    fn vanishes(&self) -> &'static str {
        "This window keeps nothing: what you type is gone when it closes."
    }
    fn newer_version(&self) -> &'static str {
        "A newer version is here."
    }
    fn use_it(&self) -> &'static str {
        "Use it now"
    }
    fn places(&self) -> &'static str {
        "Places"
    }
    fn save_a_copy(&self) -> &'static str {
        "Save a copy, mend the app"
    }
    fn try_again(&self) -> &'static str {
        "Try again"
    }
    fn cannot_read_why(&self) -> &'static str {
        "Nothing is deleted. Close other windows of this app and try again; if it stays so, save a copy of everything as text."
    }
    fn rest_not_here(&self) -> &'static str {
        "This part of the app has not come yet"
    }
    fn rest_not_here_why(&self) -> &'static str {
        "It needs signal once, on the first visit. Nothing you saved is lost."
    }
    fn not_here(&self) -> &'static str {
        "This animal is not here"
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    struct Utc;

    impl Zone for Utc {
        fn offset_min(&self, _: Instant) -> i32 {
            0
        }
    }

    #[test]
    fn a_draft_says_the_day_when_it_is_not_of_today() {
        let words = English::default();
        // 2026-05-05, 08:00.
        let at = Instant::from_ms(1_777_968_000_000);
        let today: LocalDate = "2026-05-05".parse().unwrap();
        assert_eq!(
            words.draft_from(at, today, &Utc),
            "As you left it at 08:00."
        );
        let later = today.succ_opt().unwrap();
        assert_eq!(
            words.draft_from(at, later, &Utc),
            "As you left it on Tue 5 May at 08:00."
        );
    }
}
