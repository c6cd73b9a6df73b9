//! The soaks of the day, tub by tub: start a tub, leave a soak out today, see the tubs.

use super::work::{Work, yard};
use crate::device::clock::DeviceZone;
use crate::device::ids;
use crate::parts::{
    Action, ActionRow, Back, Caution, Figure, Frame, FrameKind, LargeSlot, Press, Quiet, QuietRow,
    Row, Rows, Sentence,
};
use crate::places::{Saving, Unread};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::soak::NotSoaked;
use tussock_core::units::LocalDate;
use tussock_flow::acts::Act;
use tussock_flow::forms::round::{Refused, Ticking};
use tussock_flow::forms::soaks::{not_soaked, soaked_after_all};
use tussock_flow::forms::tub::checked;
use tussock_flow::routes::Route;
use tussock_flow::views::shed::weather;
use tussock_flow::views::soaks::{DrySeen, DrySugar, LoadSeen, Planned, Soaks as View, soaks};
use tussock_flow::words::{
    English, HorsesWords, RoundWords, ShedWords, SoakWords, SoaksWords, TubWords, UnitWords,
};

/// Why hay is not soaked, one button each.
const REASONS: [NotSoaked; 4] = [
    NotSoaked::Frozen,
    NotSoaked::NoTime,
    NotSoaked::HoseBan,
    NotSoaked::Refused,
];

/// Everything the parts of this screen share.
#[derive(Clone, Copy)]
struct AtSoaks {
    world: World,
    work: Work,
    view: Memo<Option<View>>,
    today: Memo<Option<LocalDate>>,
    failed: RwSignal<bool>,
    refused: RwSignal<Option<String>>,
    busy: RwSignal<bool>,
}

/// The soaks of the day.
#[component]
pub fn Soaks() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let work = Work::of(world);
    let at = AtSoaks {
        world,
        work,
        view: Memo::new(move |_| {
            work.now
                .with(|now| now.as_ref().map(|(shelf, today)| soaks(shelf, today)))
        }),
        today: Memo::new(move |_| {
            work.now
                .with(|now| now.as_ref().map(|(_, today)| today.day))
        }),
        failed: RwSignal::new(false),
        refused: RwSignal::new(None),
        busy: RwSignal::new(false),
    };
    let said = Signal::derive(move || {
        at.view.with(|view| match view {
            Some(view) => words.soaks_stand(view),
            None => words.opening().to_owned(),
        })
    });
    let foot = move || {
        view! {
            <QuietRow>
                <Quiet says=words.start_a_soak() press=Route::NewTub.to_string() />
                <Quiet says=words.add_tub() press=Route::AddTub.to_string() />
            </QuietRow>
            {move || at.refused.get().map(|said| view! { <p class="error" role="alert">{said}</p> })}
            <Saving failed=at.failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Shed.to_string()) }>
                {move || at.action()}
            </ActionRow>
        }
    };
    view! {
        <Frame
            kind=FrameKind::Flow
            what=words.shed()
            when=Signal::derive(move || Some(words.time_at(world.now.get(), &DeviceZone)))
            foot=foot
        >
            <Sentence said />
            <Unread shelf=work.shelf />
            {work.waiting(None)}
            {move || at.inside()}
        </Frame>
    }
}

impl AtSoaks {
    fn inside(self) -> Option<impl IntoView> {
        let words = English::default();
        let (view, today) = (self.view.get()?, self.today.get()?);
        let lighter = lighter(&view, today);
        let dry = view
            .dry
            .iter()
            .map(|seen| self.dry(seen, today))
            .collect_view();
        let loads = view
            .loads
            .iter()
            .enumerate()
            .map(|(place, load)| self.load(load, place == 0, today))
            .collect_view();
        let planned = view
            .planned
            .iter()
            .map(|planned| self.planned(planned, today))
            .collect_view();
        let wet = (!view.loads.is_empty()).then(|| {
            words
                .all_liquor()
                .into_iter()
                .map(|(_, said)| {
                    view! { <Caution said=said.sentence why=words.why_asked()>{said.why}</Caution> }
                })
                .collect_view()
        });
        Some(view! {
            {lighter}
            {dry}
            {loads}
            {planned}
            {wet}
            {tubs(&view, today)}
        })
    }

    /// The nets of a visit that are not soaked, each with its reading, and the way back.
    fn dry(self, seen: &DrySeen, today: LocalDate) -> AnyView {
        let words = English::default();
        let head = words.dry_visit(seen, today);
        let means = words.not_soaked_means(seen.said.why);
        let lines = seen
            .nets
            .iter()
            .map(|hang| view! { <li>{words.dry_line(hang)}</li> })
            .collect_view();
        let start = seen.said.start.clone();
        let back = Callback::new(move |()| {
            let act = self.work.now.with_untracked(|now| {
                let (_, today) = now.as_ref()?;
                Some(soaked_after_all(today, &start))
            });
            if let Some(act) = act {
                self.write(act);
            }
        });
        let (sugar, says) = (sugar(&seen.sugar), words.soak_after_all(seen));
        view! {
            <section aria-label=head.clone()>
                <h2>{head.clone()}</h2>
                <ul>{lines}</ul>
                <p>{means.sentence} ". " {means.why}</p>
                {sugar}
                <QuietRow>
                    <Quiet says=says press=back />
                </QuietRow>
            </section>
        }
        .into_any()
    }

    /// What lies in one tub, when it goes in and is lifted out, and the button that starts it: of the first that is the
    /// action of the screen.
    fn load(self, load: &LoadSeen, first: bool, today: LocalDate) -> AnyView {
        let words = English::default();
        let head = words.load_tub(load);
        let parts = load
            .load
            .parts
            .iter()
            .map(|part| view! { <li>{words.load_part(part)}</li> })
            .collect_view();
        let full = load
            .load
            .over_full
            .then(|| view! { <Caution said=words.over_full() /> });
        let press = {
            let load = load.clone();
            Callback::new(move |()| self.start(&load))
        };
        let times = words.load_times(load, today, &DeviceZone);
        let (hay, says) = (words.load_hay(load), words.start_tub(load));
        let (findings, now) = (self.findings(load), load.now);
        view! {
            <section aria-label=head.clone()>
                <h2>{head.clone()}</h2>
                <p>{times}</p>
                <ul>{parts}</ul>
                <p class="soft">{hay}</p>
                {full}
                {findings}
                {(!first && now).then(|| view! { <QuietRow><Quiet says=says press=press /></QuietRow> })}
            </section>
        }
        .into_any()
    }

    /// What to know before it goes in, by its recipe and the air of the day.
    fn findings(self, load: &LoadSeen) -> Option<AnyView> {
        let words = English::default();
        let air = self.work.now.with(|now| {
            let (shelf, today) = now.as_ref()?;
            Some(weather(shelf, today.day).air())
        })?;
        let said = match checked(load.load.recipe, air) {
            Ok(findings) => findings
                .into_iter()
                .map(|finding| words.recipe_finding(finding).sentence)
                .collect(),
            Err(wrong) => vec![words.tub_wrong(&wrong, &DeviceZone)],
        };
        let drawn: Vec<_> = said
            .into_iter()
            .map(|said: String| view! { <Caution said=said /> })
            .collect();
        Some(drawn.into_any())
    }

    /// The reasons for which a soak is left out today, with what its hay is when it is fed dry.
    fn planned(self, planned: &Planned, today: LocalDate) -> AnyView {
        let words = English::default();
        let head = words.not_soaked_today(&planned.job, today);
        let reasons = REASONS
            .into_iter()
            .map(|why| {
                let job = planned.job.clone();
                let press = Callback::new(move |()| match not_soaked(&job, why, &ids::new()) {
                    Ok(act) => self.write(act),
                    Err(_) => self.failed.set(true),
                });
                view! { <Quiet says=words.not_soaked(why) press=press /> }
            })
            .collect_view();
        let sugar = sugar(&planned.sugar);
        view! {
            <section aria-label=head.clone()>
                <h2>{head.clone()}</h2>
                {sugar}
                <QuietRow>{reasons}</QuietRow>
            </section>
        }
        .into_any()
    }

    fn action(self) -> AnyView {
        let words = English::default();
        let first = self.view.with(|view| {
            let first = view.as_ref()?.loads.first().cloned();
            first.filter(|load| load.now)
        });
        if let Some(load) = first {
            let says = words.start_tub(&load);
            let press = Callback::new(move |()| self.start(&load));
            return view! { <Action says=says press busy=self.busy /> }.into_any();
        }
        let dry = self.view.with(|view| {
            let (seen, _) = view.as_ref()?.lighter()?;
            Some(AnimalId(seen.subject.parts().1.to_owned()))
        });
        let (says, route) = match dry {
            Some(id) => (words.weigh_nets(), Route::Nets(id)),
            None => (words.start_a_soak(), Route::NewTub),
        };
        view! { <Action says=says press=route.to_string() /> }.into_any()
    }

    /// Puts all that lies in a load into its tub, as of now.
    fn start(self, load: &LoadSeen) {
        let words = English::default();
        let yard = yard(self.world);
        let made = self.work.now.with_untracked(|now| {
            let (shelf, today) = now.as_ref()?;
            let ticking = Ticking {
                shelf,
                today,
                yard: &yard,
                tub_name: &|nth| words.tub_name(nth),
            };
            Some(ticking.start_tub(load, &mut ids::new))
        });
        match made {
            Some(Ok(act)) => self.write(act),
            Some(Err(Refused::Soak(wrong))) => {
                let said = wrong.first();
                self.refused
                    .set(said.map(|wrong| words.tub_wrong(wrong, &DeviceZone)));
            }
            Some(Err(Refused::OwnScreen | Refused::Log(_))) => {
                self.refused.set(Some(words.tick_refused().to_owned()));
            }
            None => {}
        }
    }

    fn write(self, act: Act) {
        if self.busy.get_untracked() {
            return;
        }
        self.refused.set(None);
        self.failed.set(false);
        self.busy.set(true);
        leptos::task::spawn_local(async move {
            let done = self.world.act(act, None).await;
            self.busy.try_set(false);
            self.failed.try_set(done.is_err());
        });
    }
}

/// What hay is when it is fed dry, where it is not within the limit.
fn sugar(of: &[DrySugar]) -> impl IntoView + use<> {
    let words = English::default();
    of.iter()
        .map(|sugar| {
            let said = words.dry_sugar(sugar);
            view! { <Caution said=said.sentence why=words.why_asked()>{said.why}</Caution> }
        })
        .collect_view()
}

/// The tubs of the yard.
fn tubs(view: &View, today: LocalDate) -> Option<AnyView> {
    let words = English::default();
    if view.tubs.is_empty() {
        return None;
    }
    let rows = view
        .tubs
        .iter()
        .map(|row| {
            view! {
                <Row
                    name=row.tub.name.clone()
                    second=words.tub_row(row, today, &DeviceZone)
                    press=Route::TubForm(row.tub.id.clone()).to_string()
                />
            }
        })
        .collect_view();
    Some(
        view! {
            <h2>{words.tubs_here()}</h2>
            <Rows name=words.tubs_here()>{rows}</Rows>
        }
        .into_any(),
    )
}

/// The first net that is not soaked, with its new reading in large.
fn lighter(view: &View, today: LocalDate) -> Option<AnyView> {
    let words = English::default();
    let (seen, hang) = view.lighter()?;
    let figures = vec![Figure {
        number: words.feed_number(hang.net.target()),
        unit: words.mass_unit(words.shown.mass).to_owned(),
    }];
    let note = format!(
        "{}. {}",
        words.dry_whose(seen, hang, today),
        words.dry_reading(&hang.net)
    );
    Some(
        view! {
            <LargeSlot
                line=words.not_soaked_hang_until()
                figures=Signal::stored(figures)
                note=note
            />
        }
        .into_any(),
    )
}
