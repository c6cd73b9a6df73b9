//! The walk-round: one site a screen, then all of them. One form, so that a killed phone comes back to it. Before it, who
//! scores and on which scale; after it, what two people scored on one day.

mod site;
mod summary;
mod two;
mod who;

pub use two::ConditionTwo;

use crate::device::clock::DeviceZone;
use crate::form::Form;
use crate::parts::{ActionRow, Back, Frame, FrameKind, Press, Sentence};
use crate::places::Unread;
use crate::world::World;
use leptos::prelude::*;
use site::OneSite;
use summary::AllSites;
use tussock_core::animal::{AnimalId, PersonId};
use tussock_core::assess::{ConditionScale, Site};
use tussock_flow::forms::condition::{
    INITIALS, Mark, NEW, SCALE, WHO, by, field, mark, scale_of, scored,
};
use tussock_flow::routes::{Route, Step};
use tussock_flow::views::condition::{Before, Begin, Person, before, begin, needs, persons};
use tussock_flow::words::{English, HorsesWords};
use who::Who;

/// The site of a step; `None` on the summary.
fn site_of(scale: ConditionScale, step: Step) -> Option<Site> {
    let place = usize::from(step.number()).checked_sub(1)?;
    scale.sites().get(place).copied()
}

/// The step before another; the first stays. Before the summary comes the last site.
fn step_before(scale: ConditionScale, step: Step) -> Option<Step> {
    let last = u8::try_from(scale.sites().len()).ok()?;
    Step::new(step.number().checked_sub(1)?.min(last))
}

/// Where somebody stands in the walk-round.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Stand {
    /// At who scores, and on which scale.
    Who,
    /// At a step.
    At(Step),
}

/// What the walk-round shows and where it stands.
#[derive(Clone, Copy)]
struct Walk {
    words: English,
    world: World,
    animal: StoredValue<AnimalId>,
    form: Form,
    persons: Memo<Vec<Person>>,
    begin: Memo<Option<Begin>>,
    scale: Memo<Option<ConditionScale>>,
    last: Memo<Option<Before>>,
}

impl Walk {
    /// The text of a field, as it changes.
    fn text(self, name: &str) -> String {
        self.form.held(name).unwrap_or_default()
    }

    /// What a site's field holds, as it changes.
    fn mark(self, scale: ConditionScale, site: Site) -> Option<Mark> {
        mark(scale, &self.text(field(scale, site)))
    }

    fn scored(self, scale: ConditionScale) -> Vec<(Site, f64)> {
        scored(scale, |name| self.text(name))
    }

    /// The initials of who scores, as far as anybody said.
    fn initials(self) -> Option<String> {
        if self.text(WHO) == NEW {
            return Some(self.text(INITIALS).trim().to_owned()).filter(|text| !text.is_empty());
        }
        let who = who_scores(self.form, self.world)?;
        self.persons.with(|persons| {
            let found = persons.iter().find(|person| person.id == who)?;
            Some(found.initials.clone())
        })
    }

    fn route(self, step: Step) -> Route {
        Route::Condition(self.animal.get_value(), step)
    }

    /// The way back: the site before, or the animal.
    fn back(self, scale: ConditionScale, step: Step) -> Back {
        let route = step_before(scale, step).map_or_else(
            || Route::Horse(self.animal.get_value()),
            |step| self.route(step),
        );
        Back {
            name: self.words.back().into(),
            press: Press::from(route.to_string()),
        }
    }
}

/// Whose score it will be, as it changes.
fn who_scores(form: Form, world: World) -> Option<PersonId> {
    let last = world.who.get();
    by(|name| form.held(name).unwrap_or_default(), last.as_ref())
}

/// The walk-round of an animal; where it stands is in the address.
#[component]
pub fn Condition(
    /// Which animal.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open_today(
        world,
        Route::Condition(animal.clone(), Step::FIRST).to_string(),
    );
    let id = StoredValue::new(animal);
    let shelf = world.shelf(move || needs(&id.get_value()));
    let minute = world.minute();
    let begin = Memo::new(move |_| {
        let (now, by) = (minute.get(), who_scores(form, world));
        match shelf.get() {
            Some(Ok(shelf)) => begin(&shelf, &id.get_value(), by.as_ref(), now, &DeviceZone),
            _ => None,
        }
    });
    let scale = Memo::new(move |_| {
        let begin = begin.get()?;
        Some(scale_of(&form.held(SCALE).unwrap_or_default()).unwrap_or(begin.scale))
    });
    let last = Memo::new(move |_| {
        let (now, by) = (minute.get(), who_scores(form, world));
        match (shelf.get(), scale.get()) {
            (Some(Ok(shelf)), Some(scale)) => before(
                &shelf,
                &id.get_value(),
                scale,
                by.as_ref(),
                now,
                &DeviceZone,
            ),
            _ => None,
        }
    });
    let persons = Memo::new(move |_| match shelf.get() {
        Some(Ok(shelf)) => persons(&shelf),
        _ => Vec::new(),
    });
    let walk = Walk {
        words,
        world,
        animal: id,
        form,
        persons,
        begin,
        scale,
        last,
    };
    let name = Signal::derive(move || begin.get().map(|begin| begin.name).unwrap_or_default());
    let stand = Memo::new(move |held: Option<&Stand>| match world.route.get() {
        Route::Condition(_, step) => Stand::At(step),
        Route::ConditionWho(_) => Stand::Who,
        _ => held.copied().unwrap_or(Stand::At(Step::FIRST)),
    });
    move || {
        let unread = view! { <Unread shelf /> };
        match (stand.get(), scale.get()) {
            (Stand::Who, _) => view! { <Who walk name>{unread}</Who> }.into_any(),
            (Stand::At(step), Some(scale)) => match site_of(scale, step) {
                Some(site) => {
                    view! { <OneSite walk name scale step site>{unread}</OneSite> }.into_any()
                }
                None => view! { <AllSites walk name scale>{unread}</AllSites> }.into_any(),
            },
            (Stand::At(step), None) => {
                let opening = Signal::derive(move || shelf.get().is_none());
                view! { <NotYet walk name step opening>{unread}</NotYet> }.into_any()
            }
        }
    }
}

/// Before the disk has answered nobody knows the scale.
#[component]
fn NotYet(
    walk: Walk,
    name: Signal<String>,
    step: Step,
    opening: Signal<bool>,
    children: Children,
) -> impl IntoView {
    let foot = move || {
        view! {
            <ActionRow back=walk.back(ConditionScale::NineStep, step)>{().into_any()}</ActionRow>
        }
    };
    let words = walk.words;
    let said = Signal::derive(move || {
        let said = if opening.get() {
            words.opening()
        } else {
            words.not_here()
        };
        said.to_owned()
    });
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            <Sentence said=said />
            {children()}
        </Frame>
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use ConditionScale::{FiveStep, NineStep};

    #[test]
    fn six_sites_and_then_the_summary() {
        assert_eq!(site_of(NineStep, Step::FIRST), Some(Site::Neck));
        assert_eq!(site_of(NineStep, Step::SUMMARY), None);
        assert_eq!(step_before(NineStep, Step::FIRST), None);
    }

    #[test]
    fn three_sites_from_0_to_5_and_back_from_the_summary_to_the_last() {
        let third = Step::new(3).unwrap();
        assert_eq!(site_of(FiveStep, third), Some(Site::Pelvis));
        assert_eq!(site_of(FiveStep, third.next()), None);
        assert_eq!(step_before(FiveStep, Step::SUMMARY), Some(third));
        assert_eq!(step_before(FiveStep, third.next()), Some(third));
    }
}
