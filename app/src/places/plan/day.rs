//! The day of the plan of an animal or a group.

use crate::device::clock::{self, DeviceZone};
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Caution, Cord, Frame, FrameKind, Hang, Press, Quiet, QuietRow, Rank,
    Sentence, State, StopBlock, Tag,
};
use crate::places::plan::allowed::lines;
use crate::places::{Saving, Unread};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::{AnimalId, YardId};
use tussock_core::day::GapVerdict;
use tussock_core::round::Subject;
use tussock_core::units::Instant;
use tussock_flow::routes::Route;
use tussock_flow::views::day::{self, DayLine, DayOffer, DayView};
use tussock_flow::views::shed::Standing;
use tussock_flow::words::{
    DayScreenWords, DayWords, English, GroupWords, HorsesWords, PlanScreenWords, Said,
};

/// The day of the plan of an animal or a group.
#[component]
pub fn Day(
    /// Whose.
    of: Subject,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let (own, back, nets) = routes(&of);
    let form = Form::open(world, own.to_string());
    let id = StoredValue::new(of);
    let minute = world.minute();
    let since = minute.get_untracked();
    let shelf = world.shelf(move || day::needs(&id.get_value(), since));
    let at = move |now: Instant| match shelf.get() {
        Some(Ok(shelf)) => day::day(&shelf, &id.get_value(), now, &DeviceZone),
        _ => None,
    };
    let today = Memo::new(move |_| at(minute.get()));
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let accept = Callback::new(move |()| {
        let accepted = untrack(|| at(clock::now())).and_then(|view| view.accept());
        let Some(Ok(act)) = accepted else {
            failed.set(true);
            return;
        };
        busy.set(true);
        leptos::task::spawn_local(async move {
            let done = form.save(act).await;
            busy.try_set(false);
            if done.is_err() {
                failed.try_set(true);
            }
        });
    });
    let hang_rest = Callback::new(move |()| {
        let of = id.get_value();
        let said =
            untrack(|| at(clock::now())).and_then(|view| view.hang_rest(&of, &form.id("rest")));
        let Some(act) = said else {
            failed.set(true);
            return;
        };
        busy.set(true);
        leptos::task::spawn_local(async move {
            let done = form.save(act).await;
            busy.try_set(false);
            if done.is_err() {
                failed.try_set(true);
            }
        });
    });
    let back = back.to_string();
    let plan = StoredValue::new(back.clone());
    let nets = StoredValue::new(nets.to_string());
    let foot = move || {
        let back = back.clone();
        let action = move || {
            today.with(|today| {
                let view = today.as_ref()?;
                let (says, press) = match (view.first(), &view.held) {
                    (DayOffer::Accept, Some(held)) => (
                        words.accept_this(held.layout.longest_h),
                        Press::from(accept),
                    ),
                    (DayOffer::HangRest, _) => {
                        (words.hang_rest_so().to_owned(), Press::from(hang_rest))
                    }
                    (DayOffer::WeighNets, _) => (
                        words.weigh_the_nets().to_owned(),
                        Press::from(nets.get_value()),
                    ),
                    _ => match &view.fed_with {
                        Some(group) => (
                            words.see_the_day(&group.name),
                            Press::from(Route::GroupDay(group.id.clone()).to_string()),
                        ),
                        None => (
                            words.see_the_plan().to_owned(),
                            Press::from(plan.get_value()),
                        ),
                    },
                };
                Some(view! { <Action says=says press=press busy=busy /> })
            })
        };
        let beside = move || {
            let weighs = today.with(|today| {
                today.as_ref().is_some_and(|view| {
                    matches!(view.first(), DayOffer::Accept | DayOffer::HangRest)
                })
            });
            weighs.then(|| {
                let nets = Press::from(nets.get_value());
                view! { <QuietRow><Quiet says=words.weigh_the_nets() press=nets /></QuietRow> }
            })
        };
        view! {
            {beside}
            <Saving failed=failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back) }>{action}</ActionRow>
        }
    };
    let body = move || {
        if today.with(Option::is_none) {
            let said = if shelf.get().is_none() {
                words.opening()
            } else {
                words.not_here()
            };
            return view! { <Sentence said=said /> }.into_any();
        }
        today.with(|today| today.as_ref().map(said_of)).into_any()
    };
    view! {
        <Frame
            kind=FrameKind::Flow
            what=Signal::derive(move || today.with(|today| today.as_ref().map(|view| view.name.clone()).unwrap_or_default()))
            when=words.day_word()
            foot=foot
        >
            {body}
            <Unread shelf />
        </Frame>
    }
}

/// The day's own address, the plan it is of, and the nets that hang on it.
fn routes(of: &Subject) -> (Route, Route, Route) {
    match of {
        Subject::Group(id) => (
            Route::GroupDay(id.clone()),
            Route::Group(id.clone()),
            Route::Nets(AnimalId(id.0.clone())),
        ),
        Subject::Animal(AnimalId(id)) | Subject::Yard(YardId(id)) => {
            let id = AnimalId(id.clone());
            (
                Route::Day(id.clone()),
                Route::Plan(id.clone()),
                Route::Nets(id),
            )
        }
    }
}

/// What the screen says of the day.
fn said_of(view: &DayView) -> AnyView {
    let words = English::default();
    let Some(held) = &view.held else {
        let Some(group) = &view.fed_with else {
            return view! { <Sentence said=words.no_day() /> }.into_any();
        };
        let Said { sentence, why } = words.fed_with(&view.name, &group.name);
        return view! { <Sentence said=sentence /> <p>{why}</p> }.into_any();
    };
    let nets = view
        .lines
        .iter()
        .filter(|line| matches!(line, DayLine::Net { .. }))
        .count();
    let sentence = match &view.said {
        Some(left) => words.day_anew(left.len()),
        None => words.day_sentence(nets, held.layout.longest_h),
    };
    let now = clock::now();
    let head = match view.alarm() {
        Some(real) if view.feed_now() => {
            let order = words.real_is_worse(&view.name, real);
            let since = words.has_forage(real, now, &DeviceZone);
            view! {
                <StopBlock order=order rank=Rank::Sentence>
                    <p>{since}</p>
                    <p>{words.feed_what()}</p>
                </StopBlock>
                <p>{sentence}</p>
            }
            .into_any()
        }
        Some(real) => {
            let said = words.real_is_worse(&view.name, real);
            let until = words.has_forage(real, now, &DeviceZone);
            view! {
                <Sentence said=sentence />
                <Caution said=said />
                <p>{until}</p>
            }
            .into_any()
        }
        None => {
            let until = held
                .real
                .as_ref()
                .map(|real| words.has_forage(real, now, &DeviceZone));
            view! {
                <Sentence said=sentence />
                {until.map(|until| view! { <p>{until}</p> })}
            }
            .into_any()
        }
    };
    let hung = view
        .lines
        .iter()
        .map(|line| {
            let reached = Signal::stored(matches!(line, DayLine::Net { hung: Some(_), .. }));
            let state = shape(line);
            let word = words.line_stands(line);
            let lead = words.line_time(line);
            let what = words.line_what(line);
            let second = words.line_second(line, &DeviceZone);
            view! { <Hang reached><Tag state word lead what second /></Hang> }
        })
        .collect_view();
    let mends: Vec<Said> = view
        .mends()
        .iter()
        .map(|mend| Said::plain(words.mend(*mend)))
        .collect();
    let accepted = match (view.first(), held.accepted_h) {
        (DayOffer::Accept, _) => Some(words.accepting_means().to_owned()),
        (_, Some(hours)) if held.layout.verdict == GapVerdict::OverTheLine => {
            Some(words.wait_accepted(hours))
        }
        _ => None,
    };
    view! {
        {head}
        {rest_of(view)}
        <Cord name=words.the_day_in_order()>{hung}</Cord>
        {lines(words.mends_head(), mends)}
        {accepted.map(|accepted| view! { <p>{accepted}</p> })}
    }
    .into_any()
}

/// The rest of today: as it can be laid out anew with why and what it leaves, else as the person said it.
fn rest_of(view: &DayView) -> Option<AnyView> {
    let words = English::default();
    let Some(rest) = &view.rest else {
        let said = view.said.as_ref()?;
        let said = words.rest_of_today(said);
        return Some(view! { <p><strong>{said}</strong></p> }.into_any());
    };
    let why = rest
        .why
        .iter()
        .map(|why| view! { <p>{words.why_anew(*why)}</p> })
        .collect_view();
    let laid = view.laid().map(|laid| {
        let leaves = words
            .rest_leaves(laid)
            .into_iter()
            .map(|said| view! { <p>{said}</p> })
            .collect_view();
        let means = laid
            .body
            .is_some()
            .then(|| view! { <p class="soft">{words.hanging_so_means()}</p> });
        let said = words.rest_of_today(&laid.hangings);
        view! {
            <p><strong>{said}</strong></p>
            {leaves}
            {means}
        }
    });
    let cannot = words
        .rest_cannot(&rest.verdict)
        .map(|said| view! { <Caution said=said /> });
    Some(
        view! {
            {why}
            {laid}
            {cannot}
        }
        .into_any(),
    )
}

const fn shape(line: &DayLine) -> State {
    match line {
        DayLine::Net { standing, .. } => match standing {
            Standing::Done => State::Done,
            Standing::Late => State::Late,
            _ => State::Later,
        },
        DayLine::Nothing { .. } => State::Later,
        DayLine::Wait { verdict, .. } => match verdict {
            GapVerdict::Planned => State::Later,
            GapVerdict::Care | GapVerdict::OverTheLine => State::Care,
        },
    }
}
