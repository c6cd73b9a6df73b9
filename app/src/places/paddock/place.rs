//! Grass today: when it is open, who is out, and what closes it.

use super::at::{AtGrass, told};
use super::log::Correcting;
use crate::device::clock;
use crate::device::ids;
use crate::parts::{
    Action, ActionRow, Choice, Cord, Frame, FrameKind, Hang, Offer, Press, Quiet, QuietRow, Rank,
    Row, Rows, Sentence, State, StopBlock, Tag,
};
use crate::places::{Places, Saving, Unread, UpdateOffer};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::{AnimalId, PaddockId};
use tussock_core::units::Zone;
use tussock_flow::forms::turnout::{self, bring_in, turn_out};
use tussock_flow::routes::{Place, Route};
use tussock_flow::views::fields::fields;
use tussock_flow::views::paddock::{Goes, Stands};
use tussock_flow::words::{
    BesideWords, English, FieldWords, GrassWords, HorsesWords, PaddockWords,
};

/// Grass today.
#[component]
pub fn Paddock(
    /// For whom; the first that may go out when nobody is named.
    of: Option<AnimalId>,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let at = AtGrass::new(world, of);
    let correcting = Correcting::new();
    let foot = move || {
        view! {
            {move || at.quiet()}
            <UpdateOffer />
            <Saving failed=at.failed />
            {move || at.action()}
        }
    };
    view! {
        <Frame
            kind=FrameKind::Place
            what=words.paddock()
            when=Signal::derive(move || at.whose())
            foot=foot
            places=move || view! { <Places here=Place::Paddock /> }
        >
            {move || at.head()}
            <Unread shelf=at.shelf />
            {at.chips()}
            {move || at.goes.get().map(|goes| at.below(&goes))}
            {move || at.goes.get().map(|goes| at.choices(&goes))}
            {move || at.others()}
            {move || at.goes.get().map(|goes| at.turnouts(&goes, correcting))}
            {at.correcting(correcting)}
            {move || at.fields()}
            {move || at.links()}
        </Frame>
    }
}

/// One of the others, worded.
struct Other {
    state: State,
    word: &'static str,
    name: String,
    line: String,
    to: String,
}

impl Other {
    fn hung(self) -> AnyView {
        view! {
            <Hang>
                <Tag state=self.state word=self.word what=self.name second=Some(self.line) press=self.to />
            </Hang>
        }
        .into_any()
    }
}

/// The shape of how grass stands.
const fn shape(stands: &Stands) -> State {
    match stands {
        Stands::Out => State::Due,
        Stands::Late => State::Late,
        // The one block of a screen is that of the one it is about.
        Stands::Closed => State::Care,
        Stands::HadIt | Stands::Over(_) => State::Done,
        Stands::Open(_) | Stands::Opens(_) => State::Later,
    }
}

impl AtGrass {
    /// Where, and whose.
    fn whose(self) -> Option<String> {
        let goes = self.goes.get()?;
        Some(match goes.paddock {
            Some((_, paddock)) => format!("{paddock}, {}", goes.name),
            None => goes.name,
        })
    }

    /// The sentence, or the stop with its first reason and what to do instead.
    fn head(self) -> AnyView {
        let words = English::default();
        let Some(goes) = self.goes.get() else {
            let said = if self.view.with(Option::is_some) {
                words.no_horse_yet()
            } else {
                words.opening()
            };
            return view! { <Sentence said=said /> }.into_any();
        };
        if goes.stands != Stands::Closed {
            let zone = self.zone();
            let line = goes.out.as_ref().map(|out| words.out_since(out, &zone));
            let why = goes.out.is_none().then(|| words.why_to(goes.window.why_to));
            return view! {
                <Sentence said=words.grass_sentence(&goes, &zone) />
                {line.map(|line| view! { <p>{line}</p> })}
                {why.map(|why| view! { <p>{why}</p> })}
            }
            .into_any();
        }
        let first = goes.window.closed.first().copied();
        let why = match &goes.stop {
            Some((name, stop)) => Some(format!("{name}: {}.", words.stop_order(stop))),
            None => first.map(|closed| format!("{}.", words.closed(&closed).sentence)),
        };
        let instead = first.map(|closed| words.instead_of_grass(&closed));
        view! {
            <StopBlock order=words.no_grass_today() rank=Rank::Sentence>
                {why.map(|why| view! { <p>{why}</p> })}
                {instead.map(|instead| view! { <p>{instead}</p> })}
            </StopBlock>
        }
        .into_any()
    }

    /// Every reason, every care, the day.
    fn below(self, goes: &Goes) -> AnyView {
        let words = English::default();
        let zone = self.zone();
        let closed = goes
            .window
            .closed
            .iter()
            .map(|closed| told(words.closed(closed)))
            .collect_view();
        let care = goes
            .window
            .care
            .iter()
            .map(|care| told(words.care(care, &zone)))
            .collect_view();
        let clock = self.other_clock().then(|| told(words.clock_of_yard()));
        let set_by = goes
            .set_by
            .as_ref()
            .map(|name| view! { <p>{words.set_by(name)}</p> });
        let place = self
            .view
            .with(|view| view.as_ref().is_none_or(|view| view.place.is_none()));
        let place = place.then(|| {
            view! {
                <QuietRow>
                    <Quiet says=words.say_where_yard_lies() press=Route::GrassPlace.to_string() />
                </QuietRow>
            }
        });
        let risk = goes
            .window
            .closed
            .is_empty()
            .then(|| view! { <p>{words.no_small_risk()}</p> });
        view! {
            {closed}
            {risk}
            {words.by_plan(goes).map(told)}
            {set_by}
            {self.day(goes)}
            {clock}
            {care}
            {place}
        }
        .into_any()
    }

    /// Which paddock and which muzzle, where there is something to choose.
    fn choices(self, goes: &Goes) -> AnyView {
        let words = English::default();
        if goes.out.is_some() {
            return ().into_any();
        }
        let paddocks = self.view.with(|view| {
            let paddocks = view.as_ref().map(|view| view.paddocks.clone());
            paddocks.unwrap_or_default()
        });
        let several = (1 < paddocks.len()).then(|| {
            let offers: Vec<Offer<PaddockId>> = paddocks
                .into_iter()
                .map(|(id, name)| Offer::new(id, name))
                .collect();
            let chosen = goes.paddock.as_ref().map(|(id, _)| id.clone());
            let about = goes.about.clone();
            let choose = Callback::new(move |id| {
                self.chosen.update(|chosen| {
                    *chosen = std::mem::take(chosen).for_one(&about);
                    chosen.paddock = Some(id);
                });
            });
            view! {
                <Choice legend=words.which_paddock() offers=offers chosen=Signal::stored(chosen) on_choose=choose />
            }
        });
        let muzzle = goes.decided.as_ref().is_some_and(|decided| decided.muzzle).then(|| {
            let offers = [true, false].map(|on| Offer::new(on, words.muzzled(on))).to_vec();
            let about = goes.about.clone();
            let choose = Callback::new(move |on| {
                self.chosen.update(|chosen| {
                    *chosen = std::mem::take(chosen).for_one(&about);
                    chosen.muzzle = Some(on);
                });
            });
            view! {
                <Choice legend=words.muzzle_asked() offers=offers chosen=Signal::stored(Some(goes.muzzle)) on_choose=choose />
            }
        });
        view! { {several} {muzzle} }.into_any()
    }

    fn out_now(self) {
        let now = clock::now();
        let goes = self.goes.get_untracked();
        let Some(goes) = goes.filter(|_| !self.busy.get_untracked()) else {
            return;
        };
        let (by, _) = goes.by_if_out(now);
        let how = turnout::Goes {
            paddock: goes.paddock.as_ref().map(|(id, _)| id.clone()),
            muzzle: goes.muzzle,
            // What goes out while grass is closed is to come in at once.
            by: Some(by),
        };
        self.write(turn_out(&goes.about, how, &ids::new()));
    }

    fn in_now(self) {
        let out = self.goes.with_untracked(|goes| goes.as_ref()?.out.clone());
        if let Some(out) = out.filter(|_| !self.busy.get_untracked()) {
            self.write(bring_in(&out.id, &out.body, clock::now()));
        }
    }

    fn action(self) -> AnyView {
        let words = English::default();
        let (says, press): (String, Press) = match self.goes.get() {
            None => (
                words.add_an_animal().to_owned(),
                Route::NewHorse.to_string().into(),
            ),
            Some(Goes {
                name,
                out: Some(out),
                ..
            }) => (
                // Who is out with its group comes in with it.
                words.bring_in(out.with.as_ref().unwrap_or(&name)),
                Callback::new(move |()| self.in_now()).into(),
            ),
            Some(goes) if goes.may_go(self.world.minute().get()) => (
                words.turn_out(&goes.name),
                Callback::new(move |()| self.out_now()).into(),
            ),
            Some(goes) => {
                let to = Route::Grazing(AnimalId(goes.about.id().to_owned()));
                (words.say_how_out(&goes.name), to.to_string().into())
            }
        };
        view! { <ActionRow><Action says=says press=press busy=self.busy /></ActionRow> }.into_any()
    }

    /// What happened must be written down, closed or not.
    fn quiet(self) -> AnyView {
        let words = English::default();
        let now = self.world.minute().get();
        let aside = self.goes.with(|goes| {
            goes.as_ref()
                .is_some_and(|g| g.out.is_none() && !g.may_go(now))
        });
        let out = Callback::new(move |()| self.out_now());
        aside
            .then(|| view! { <QuietRow><Quiet says=words.out_already() press=out /></QuietRow> })
            .into_any()
    }

    /// The others, each a tag that leads to its own day.
    fn others(self) -> AnyView {
        let words = English::default();
        let zone = self.zone();
        let here = self
            .goes
            .with(|goes| goes.as_ref().map(|goes| goes.about.clone()));
        let others: Vec<Other> = self.view.with(|view| {
            let goes = view.iter().flat_map(|view| view.goes.iter());
            goes.filter(|goes| Some(&goes.about) != here.as_ref())
                .map(|goes| Other {
                    state: shape(&goes.stands),
                    word: words.grass_stands(&goes.stands),
                    name: goes.name.clone(),
                    line: words.grass_line(goes, &zone),
                    to: Route::PaddockOf(AnimalId(goes.about.id().to_owned())).to_string(),
                })
                .collect()
        });
        let tags: Vec<AnyView> = others.into_iter().map(Other::hung).collect();
        if tags.is_empty() {
            return ().into_any();
        }
        view! { <h2>{words.others_out()}</h2> <Cord name=words.others_out()>{tags}</Cord> }
            .into_any()
    }

    /// The paddocks.
    fn fields(self) -> AnyView {
        let words = English::default();
        let Some(Ok(shelf)) = self.shelf.get() else {
            return ().into_any();
        };
        let zone = self.zone();
        let today = zone.to_local(clock::now()).date;
        let rows = fields(&shelf, &zone)
            .into_iter()
            .map(|row| {
                let second = Some(words.field_row(&row, today)).filter(|said| !said.is_empty());
                view! {
                    <Row name=row.name second=second press=Route::Field(row.id).to_string() />
                }
            })
            .collect_view();
        let list = if rows.is_empty() {
            view! { <p class="soft">{words.no_paddock_yet()}</p> }.into_any()
        } else {
            view! { <Rows name=words.the_paddocks()>{rows}</Rows> }.into_any()
        };
        view! { <h2>{words.the_paddocks()}</h2> {list} }.into_any()
    }

    fn links(self) -> AnyView {
        let words = English::default();
        let how = self.goes.with(|goes| {
            let about = goes.as_ref()?.about.id().to_owned();
            Some(Route::Grazing(AnimalId(about)).to_string())
        });
        view! {
            <QuietRow>
                <Quiet says=words.add_a_paddock() press=Route::NewField.to_string() />
                <Quiet says=words.grass_week() press=Route::GrassWeek.to_string() />
                <Quiet says=words.grass_season() press=Route::Season.to_string() />
                <Quiet says=words.grass_plants() press=Route::Plants.to_string() />
                {how.map(|how| view! { <Quiet says=words.how_it_goes_out() press=how /> })}
                <Quiet says=words.grass_rests_on() press=Route::GrassModel.to_string() />
                <Quiet says=words.where_yard_lies() press=Route::GrassPlace.to_string() />
            </QuietRow>
        }
        .into_any()
    }
}
