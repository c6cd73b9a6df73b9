//! The walk-round: one site a screen, then all six. One form, so that a killed phone comes back to it.

mod summary;

use crate::device::clock::DeviceZone;
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, CutDrawing, Frame, FrameKind, Key, Pad, PadCell, Press, Sentence,
};
use crate::places::{Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use summary::AllSites;
use tussock_core::animal::AnimalId;
use tussock_core::assess::Site;
use tussock_flow::forms::condition::{Mark, SCALE, Touch, field, mark, scored, touched};
use tussock_flow::routes::{Route, Step};
use tussock_flow::views::condition::{Before, before};
use tussock_flow::views::{cut, horses};
use tussock_flow::words::{AssessWords, ConditionWords, English, HorsesWords};

/// The site of a step; `None` on the summary.
fn site_of(step: Step) -> Option<Site> {
    SCALE
        .sites()
        .get(usize::from(step.number()).checked_sub(1)?)
        .copied()
}

/// The step before another; the first stays.
fn step_before(step: Step) -> Option<Step> {
    Step::new(step.number().checked_sub(1)?)
}

/// What the walk-round shows and where it stands.
#[derive(Clone, Copy)]
struct Walk {
    words: English,
    world: World,
    animal: StoredValue<AnimalId>,
    form: Form,
    last: Memo<Option<Before>>,
}

impl Walk {
    /// What a site's field holds, as it changes.
    fn mark(self, site: Site) -> Option<Mark> {
        mark(&self.form.held(field(site)).unwrap_or_default())
    }

    fn scored(self) -> Vec<(Site, f64)> {
        scored(|site| self.form.held(field(site)).unwrap_or_default())
    }

    fn route(self, step: Step) -> Route {
        Route::Condition(self.animal.get_value(), step)
    }

    /// The way back: the site before, or the animal.
    fn back(self, step: Step) -> Back {
        let route = step_before(step).map_or_else(
            || Route::Horse(self.animal.get_value()),
            |step| self.route(step),
        );
        Back {
            name: self.words.back().into(),
            press: Press::from(route.to_string()),
        }
    }
}

/// The walk-round of an animal; its step stands in the address.
#[component]
pub fn Condition(
    /// Which animal.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let form = Form::open_today(
        world,
        Route::Condition(animal.clone(), Step::FIRST).to_string(),
    );
    let id = StoredValue::new(animal);
    let shelf = world.shelf(move || horses::one_needs(&id.get_value()));
    let minute = world.minute();
    let last = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => before(&shelf, &id.get_value(), now, &DeviceZone),
        _ => None,
    });
    let name = Signal::derive(move || match shelf.get() {
        Some(Ok(shelf)) => shelf
            .animal(&id.get_value())
            .map(|animal| animal.name)
            .unwrap_or_default(),
        _ => String::new(),
    });
    let walk = Walk {
        words: English::default(),
        world,
        animal: id,
        form,
        last,
    };
    let step = Memo::new(move |held: Option<&Step>| match world.route.get() {
        Route::Condition(_, step) => step,
        _ => held.copied().unwrap_or(Step::FIRST),
    });
    move || {
        let unread = view! { <Unread shelf /> };
        match site_of(step.get()) {
            Some(site) => {
                view! { <OneSite walk name step=step.get() site>{unread}</OneSite> }.into_any()
            }
            None => view! { <AllSites walk name>{unread}</AllSites> }.into_any(),
        }
    }
}

/// One site: where to lay the hand, the drawing, the words, the pad.
#[component]
fn OneSite(
    walk: Walk,
    name: Signal<String>,
    step: Step,
    site: Site,
    children: Children,
) -> impl IntoView {
    let words = walk.words;
    let marked = Signal::derive(move || walk.mark(site));
    let chosen = Signal::derive(move || match marked.get() {
        Some(Mark::Score(score)) => Some(score),
        Some(Mark::Skipped) | None => None,
    });
    let touch = move |touch: Touch| {
        let name = field(site);
        walk.form.set(name, touched(&walk.form.now(name), touch));
    };
    let on_key = Callback::new(move |key: Key| match key {
        Key::Digit(digit) => touch(Touch::Step(digit)),
        Key::HalfLess => touch(Touch::HalfLess),
        Key::HalfMore => touch(Touch::HalfMore),
        Key::Skip => {
            touch(Touch::Skip);
            walk.world.go(&walk.route(step.next()));
        }
        Key::Point | Key::Erase | Key::Step(_) => {}
    });
    let foot = move || {
        let digits = (1..=9).map(|digit| {
            let on = Signal::derive(move || chosen.get().is_some_and(|score| within(score, digit)));
            PadCell::new(Key::Digit(digit), digit.to_string()).held(on)
        });
        let cells = digits
            .chain([
                PadCell::new(Key::HalfLess, words.half_less()),
                PadCell::new(Key::HalfMore, words.half_more()),
                PadCell::new(Key::Skip, words.skip())
                    .held(Signal::derive(move || marked.get() == Some(Mark::Skipped))),
            ])
            .collect();
        let next = site_of(step.next());
        let says = next.map_or_else(
            || words.to_summary().to_owned(),
            |site| words.next_site(site),
        );
        view! {
            <Pad name=words.score_keys() cells on_key />
            <ActionRow back=walk.back(step)>
                <Action says=says press=walk.route(step.next()).to_string() />
            </ActionRow>
        }
    };
    let drawing = Signal::derive(move || {
        cut::cut(site, chosen.get()).unwrap_or(cut::Cut {
            bones: Vec::new(),
            surface: None,
        })
    });
    let figure = move || {
        let said = match marked.get() {
            Some(Mark::Score(score)) => words.step_figure(score),
            Some(Mark::Skipped) => words.left_out().to_owned(),
            None => words.choose_a_step().to_owned(),
        };
        // Last time is told only when this time is chosen: nobody scores from a score.
        let last = chosen.get().and_then(|_| {
            let last = walk.last.get()?;
            Some(words.last_time(last.site(site)?, last.on))
        });
        view! {
            <p class="site-figure" role="status">
                <b>{said}</b>
                {last.map(|last| view! { " "<span class="soft">{last}</span> })}
            </p>
        }
    };
    let lines = move || {
        steps_beside(chosen.get())
            .into_iter()
            .filter_map(|(whole, ink)| Some((whole, ink, words.step(site, SCALE, whole)?)))
            .map(|(whole, ink, text)| {
                view! { <p class:soft=!ink><b>{whole}</b>" "{text}</p> }
            })
            .collect_view()
    };
    view! {
        <Frame
            kind=FrameKind::Flow
            what=name
            when=Signal::stored(Some(words.site_of(step.number(), SCALE.sites().len())))
            foot=foot
        >
            <Sentence said=words.site(site) />
            {children()}
            {(step == Step::FIRST).then(|| draft_line(walk.form))}
            <p>{words.lay_hand(site)}</p>
            <CutDrawing name=words.drawing(site) cut=drawing />
            {figure}
            <div class="site-words">{lines}</div>
        </Frame>
    }
}

/// Whether a score lies on a whole step or the half above it.
fn within(score: f64, step: u8) -> bool {
    let step = f64::from(step);
    step <= score && score < step + 1.0
}

/// The whole steps whose words are shown, and whether in ink: those a score lies on or between, and their neighbours.
/// While nobody chose, the ends and the middle.
fn steps_beside(score: Option<f64>) -> Vec<(u8, bool)> {
    let steps = || 1..=9_u8;
    match score {
        None => steps().step_by(4).map(|step| (step, false)).collect(),
        Some(score) => steps()
            .map(|step| (step, (f64::from(step) - score).abs()))
            .filter(|(_, away)| *away <= 1.5)
            .map(|(step, away)| (step, away < 1.0))
            .collect(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_words_of_a_score_stand_between_their_neighbours() {
        assert_eq!(steps_beside(Some(6.0)), [(5, false), (6, true), (7, false)]);
        assert_eq!(
            steps_beside(Some(6.5)),
            [(5, false), (6, true), (7, true), (8, false)]
        );
        assert_eq!(steps_beside(Some(9.0)), [(8, false), (9, true)]);
        assert_eq!(steps_beside(None), [(1, false), (5, false), (9, false)]);
    }

    #[test]
    fn six_sites_and_then_the_summary() {
        assert_eq!(site_of(Step::FIRST), Some(Site::Neck));
        assert_eq!(site_of(Step::SUMMARY), None);
        assert_eq!(step_before(Step::FIRST), None);
    }
}
