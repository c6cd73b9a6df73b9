//! One site: where to lay the hand, the drawing, the words, the pad.

use super::{Walk, site_of};
use crate::parts::{
    Action, ActionRow, CutDrawing, Frame, FrameKind, Key, Pad, PadCell, Quiet, QuietRow, Sentence,
};
use crate::places::draft_line;
use leptos::prelude::*;
use tussock_core::assess::{ConditionScale, Site};
use tussock_flow::forms::condition::{Mark, Touch, field, steps, touched};
use tussock_flow::routes::{Route, Step};
use tussock_flow::views::condition::Before;
use tussock_flow::views::cut;
use tussock_flow::words::{AssessWords, ConditionWords};

/// One site.
#[component]
pub(super) fn OneSite(
    walk: Walk,
    name: Signal<String>,
    scale: ConditionScale,
    step: Step,
    site: Site,
    children: Children,
) -> impl IntoView {
    let words = walk.words;
    let marked = Signal::derive(move || walk.mark(scale, site));
    let chosen = Signal::derive(move || match marked.get() {
        Some(Mark::Score(score)) => Some(score),
        Some(Mark::Skipped) | None => None,
    });
    let touch = move |touch: Touch| {
        let name = field(scale, site);
        walk.form
            .set(name, touched(scale, &walk.form.now(name), touch));
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
        let digits = steps(scale).map(|digit| {
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
        let next = site_of(scale, step.next());
        let says = next.map_or_else(
            || words.to_summary(scale).to_owned(),
            |site| words.next_site(site),
        );
        view! {
            <Pad name=words.score_keys(scale) cells on_key />
            <ActionRow back=walk.back(scale, step)>
                <Action says=says press=walk.route(step.next()).to_string() />
            </ActionRow>
        }
    };
    let drawing = Signal::derive(move || {
        cut::cut(scale, site, chosen.get()).unwrap_or(cut::Cut {
            bones: Vec::new(),
            surface: None,
        })
    });
    let figure = move || {
        let said = match marked.get() {
            Some(Mark::Score(score)) => words.step_figure(score),
            Some(Mark::Skipped) => words.left_out().to_owned(),
            None => words.choose_a_step(scale),
        };
        // Last time is told only when this time is chosen: nobody scores from a score.
        let last = chosen.get().and_then(|_| {
            let last = walk.last.get();
            let last = last.as_ref().and_then(Before::same)?;
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
        steps_beside(scale, chosen.get())
            .into_iter()
            .filter_map(|(whole, ink)| Some((whole, ink, words.step(site, scale, whole)?)))
            .map(|(whole, ink, text)| {
                view! { <p class:soft=!ink><b>{whole}</b>" "{text}</p> }
            })
            .collect_view()
    };
    view! {
        <Frame
            kind=FrameKind::Flow
            what=name
            when=Signal::stored(Some(words.site_of(step.number(), scale.sites().len())))
            foot=foot
        >
            <Sentence said=words.site(site) />
            {children()}
            {(step == Step::FIRST).then(|| before_the_first(walk, scale))}
            <p>{words.lay_hand(site)}</p>
            <CutDrawing name=words.drawing(site) cut=drawing />
            {figure}
            <div class="site-words">{lines}</div>
        </Frame>
    }
}

/// What stands before the first site: what was left, who scores and how, and whether it is too early to say much.
fn before_the_first(walk: Walk, scale: ConditionScale) -> AnyView {
    let words = walk.words;
    let who = Route::ConditionWho(walk.animal.get_value()).to_string();
    let said = move || words.scored_by(walk.initials().as_deref(), scale);
    let early = move || {
        let begin = walk.begin.get()?;
        let said = match begin.early {
            Some(early) => words.scored_early(&early),
            None if begin.second => words.somebody_else_scored().to_owned(),
            None => return None,
        };
        Some(view! { <p class="soft">{said}</p> })
    };
    view! {
        {draft_line(walk.form)}
        <QuietRow>
            <span class="soft">{said}</span>
            <Quiet says=words.change_who_or_scale() press=who />
        </QuietRow>
        {early}
    }
    .into_any()
}

/// Whether a score lies on a whole step or the half above it.
fn within(score: f64, step: u8) -> bool {
    let step = f64::from(step);
    step <= score && score < step + 1.0
}

/// The whole steps whose words are shown, and whether in ink: those a score lies on or between, and their neighbours.
/// While nobody chose, a few along the scale.
fn steps_beside(scale: ConditionScale, score: Option<f64>) -> Vec<(u8, bool)> {
    let apart = match scale {
        ConditionScale::NineStep => 4,
        ConditionScale::FiveStep => 2,
    };
    match score {
        None => steps(scale)
            .step_by(apart)
            .map(|step| (step, false))
            .collect(),
        Some(score) => steps(scale)
            .map(|step| (step, (f64::from(step) - score).abs()))
            .filter(|(_, away)| *away <= 1.5)
            .map(|(step, away)| (step, away < 1.0))
            .collect(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use ConditionScale::{FiveStep, NineStep};

    #[test]
    fn the_words_of_a_score_stand_between_their_neighbours() {
        let beside = |score| steps_beside(NineStep, score);
        assert_eq!(beside(Some(6.0)), [(5, false), (6, true), (7, false)]);
        assert_eq!(
            beside(Some(6.5)),
            [(5, false), (6, true), (7, true), (8, false)]
        );
        assert_eq!(beside(Some(9.0)), [(8, false), (9, true)]);
        assert_eq!(beside(None), [(1, false), (5, false), (9, false)]);
        assert_eq!(steps_beside(FiveStep, Some(0.0)), [(0, true), (1, false)]);
        assert_eq!(
            steps_beside(FiveStep, None),
            [(0, false), (2, false), (4, false)]
        );
    }
}
