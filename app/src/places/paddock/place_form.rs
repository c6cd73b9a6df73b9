//! Where the yard lies: by this phone, or typed; and whose plants and hazards it goes by.

use crate::device::clock::{self, NamedZone};
use crate::device::location::{self, Trouble};
use crate::form::Form;
use crate::keep::KeepError;
use crate::parts::{
    Action, ActionRow, Back, Caution, Choice, Field, Frame, FrameKind, Offer, Press, Quiet,
    QuietRow, Sentence, Several, WideKey,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::{Reading, World};
use leptos::prelude::*;
use tussock_core::graze::plants::Region;
use tussock_core::log::bodies::YardV2;
use tussock_flow::forms::grass_place::{
    Field as Which, Looking, NoFix, Typed, Wrong, coarse_text, needs, yard,
};
use tussock_flow::routes::Route;
use tussock_flow::shelf::Shelf;
use tussock_flow::words::{English, GrassPlaceWords, HorsesWords, PaddockWords, StartWords};

/// The draft's field of the regions, and what parts their words in it.
const REGIONS: &str = "regions";
const PARTED: char = ' ';

/// Where the yard lies.
#[component]
pub fn GrassPlace() -> impl IntoView {
    PlaceForm::open().screen()
}

#[derive(Clone, Copy)]
struct PlaceForm {
    world: World,
    form: Form,
    shelf: Reading<Result<Shelf, KeepError>>,
    /// Whether the disk has answered.
    read: Memo<bool>,
    /// What the yard says of itself, when anything is written down of it.
    there: Memo<Option<YardV2>>,
    typed: Signal<Typed>,
    looking: RwSignal<Looking>,
    wrong: RwSignal<Vec<Wrong>>,
    failed: RwSignal<bool>,
    busy: RwSignal<bool>,
}

impl PlaceForm {
    fn open() -> Self {
        let world = World::here();
        let form = Form::open(world, Route::GrassPlace.to_string());
        let shelf = world.shelf(move || needs(&world.yard()));
        let read = Memo::new(move |_| matches!(shelf.get(), Some(Ok(_))));
        let there = Memo::new(move |_| match shelf.get() {
            Some(Ok(shelf)) => yard(&shelf, &world.yard()),
            _ => None,
        });
        // A field that nobody touched shows what is stored.
        let typed = Signal::derive(move || {
            let stored = there.with(|there| Typed::of(there.as_ref(), &clock::zone_name()));
            Typed {
                latitude: form.held("latitude").unwrap_or(stored.latitude),
                longitude: form.held("longitude").unwrap_or(stored.longitude),
                zone: form.held("zone").unwrap_or(stored.zone),
                regions: form
                    .held(REGIONS)
                    .map_or(stored.regions, |held| ticked(&held)),
            }
        });
        Self {
            world,
            form,
            shelf,
            read,
            there,
            typed,
            looking: RwSignal::new(Looking::NotAsked),
            wrong: RwSignal::new(Vec::new()),
            failed: RwSignal::new(false),
            busy: RwSignal::new(false),
        }
    }

    fn screen(self) -> AnyView {
        let words = English::default();
        let save = Callback::new(move |()| self.save());
        let busy = Signal::derive(move || self.busy.get() || !self.read.get());
        let foot = move || {
            view! {
                <QuietRow>
                    <Quiet says=words.skip_place() press=Route::Paddock.to_string() />
                </QuietRow>
                <Saving failed=self.failed />
                <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Paddock.to_string()) }>
                    <Action says=words.save_place() press=save busy />
                </ActionRow>
            }
        };
        view! {
            <Frame kind=FrameKind::Flow what=words.paddock() foot=foot>
                <Sentence said=words.where_the_yard_lies() />
                <Unread shelf=self.shelf />
                {draft_line(self.form)}
                {self.by_phone()}
                {self.field(Which::Latitude, "latitude", |typed| typed.latitude.clone())}
                {self.field(Which::Longitude, "longitude", |typed| typed.longitude.clone())}
                {move || self.clock()}
                {move || self.noon()}
                {self.regions()}
            </Frame>
        }
        .into_any()
    }

    /// The key that asks the phone, and what came of it.
    fn by_phone(self) -> AnyView {
        let words = English::default();
        let ask = Callback::new(move |()| {
            if self.looking.get_untracked() == Looking::Now {
                return;
            }
            self.looking.set(Looking::Now);
            leptos::task::spawn_local(async move {
                let found = location::find().await;
                let stands = match found {
                    Ok(found) => {
                        self.form.set("latitude", coarse_text(found.latitude));
                        self.form.set("longitude", coarse_text(found.longitude));
                        // Where it is now it keeps the time of now.
                        self.form.set("zone", clock::zone_name());
                        self.wrong.set(Vec::new());
                        Looking::Found
                    }
                    Err(trouble) => Looking::Failed(no_fix(trouble)),
                };
                self.looking.try_set(stands);
            });
        });
        view! {
            <WideKey says=words.use_this_phones_place() means=words.place_is_for() act=ask />
            <p role="status">{move || words.looking(self.looking.get())}</p>
        }
        .into_any()
    }

    fn field(self, which: Which, key: &'static str, text: fn(&Typed) -> String) -> AnyView {
        let words = English::default();
        let error = Signal::derive(move || {
            let wrong = self.wrong.get();
            let own = wrong.iter().find(|wrong| wrong.field() == Some(which));
            // What no field is to blame for stands under the first.
            let other = wrong
                .iter()
                .find(|wrong| wrong.field().is_none() && which == Which::Latitude);
            own.or(other).map(|wrong| words.place_wrong(wrong))
        });
        let echo = Signal::derive(move || {
            let read = self.typed.with(|typed| typed.figure(which));
            Some(read.map_or_else(String::new, |degrees| words.degree_echo(which, degrees)))
        });
        view! {
            <Field
                label=words.degree_field(which)
                hint=words.degree_hint(which)
                value=Signal::derive(move || self.typed.with(text))
                on_input=self.form.typed(key)
                error=error
                echo=echo
            />
        }
        .into_any()
    }

    /// The clock of the place: this phone's, or a choice where another is written down.
    fn clock(self) -> AnyView {
        let words = English::default();
        let here = clock::zone_name();
        let written = self.there.with(|there| {
            let place = there.as_ref()?.place.as_ref()?;
            Some(place.zone.as_ref()?.as_str().to_owned())
        });
        match written.filter(|written| *written != here) {
            None => view! { <p class="soft">{words.clock_is(&here)}</p> }.into_any(),
            Some(written) => {
                let offers = vec![
                    Offer::new(written.clone(), words.clock_choice(&written, false)),
                    Offer::new(here.clone(), words.clock_choice(&here, true)),
                ];
                let form = self.form;
                view! {
                    <Choice
                        legend=words.clock_asked()
                        offers=offers
                        chosen=Signal::derive(move || Some(self.typed.with(|typed| typed.zone.clone())))
                        on_choose=Callback::new(move |zone: String| form.set("zone", zone))
                    />
                }
                .into_any()
            }
        }
    }

    /// When the sun stands highest there by that clock: a swapped side or a wrong clock shows in it.
    fn noon(self) -> Option<AnyView> {
        let words = English::default();
        let noon = self
            .typed
            .with(|typed| typed.noon(clock::now(), &NamedZone::of(&typed.zone)))?;
        let said = words.noon_there(noon);
        Some(if noon.fits {
            view! { <p class="soft">{said} "."</p> }.into_any()
        } else {
            view! { <Caution said=said /> }.into_any()
        })
    }

    fn regions(self) -> AnyView {
        let words = English::default();
        let offers = Region::ALL
            .into_iter()
            .map(|region| Offer::new(region, words.region_of_hazards(region)))
            .collect();
        let choose = Callback::new(move |(region, on): (Region, bool)| {
            let mut all = self.typed.with_untracked(|typed| typed.regions.clone());
            all.retain(|held| *held != region);
            if on {
                all.push(region);
            }
            let kept: Vec<String> = Region::ALL
                .iter()
                .enumerate()
                .filter(|(_, region)| all.contains(region))
                .map(|(at, _)| at.to_string())
                .collect();
            self.form.set(REGIONS, kept.join(&PARTED.to_string()));
        });
        view! {
            <Several
                legend=words.regions_asked()
                hint=words.regions_hint().to_owned()
                offers=offers
                chosen=Signal::derive(move || self.typed.with(|typed| typed.regions.clone()))
                on_choose=choose
            />
        }
        .into_any()
    }

    fn save(self) {
        if self.busy.get_untracked() {
            return;
        }
        // What is not read yet is not written over.
        if !self.read.get_untracked() {
            return;
        }
        let there = self.there.get_untracked();
        let words = English::default();
        let typed = self.typed.get_untracked();
        match typed.act(&self.world.yard(), there.as_ref(), words.yard_name()) {
            Ok(act) => {
                self.wrong.set(Vec::new());
                self.failed.set(false);
                self.busy.set(true);
                leptos::task::spawn_local(async move {
                    let done = self.form.save(act).await;
                    self.busy.try_set(false);
                    if done.is_ok() {
                        self.world.go(&Route::Paddock);
                    } else {
                        self.failed.try_set(true);
                    }
                });
            }
            Err(wrong) => self.wrong.set(wrong),
        }
    }
}

const fn no_fix(trouble: Trouble) -> NoFix {
    match trouble {
        Trouble::NotHere => NoFix::NotHere,
        Trouble::Refused => NoFix::Refused,
        Trouble::NotFound => NoFix::NotFound,
    }
}

/// The regions that a draft holds, by their place in the list.
fn ticked(held: &str) -> Vec<Region> {
    held.split(PARTED)
        .filter_map(|at| Region::ALL.get(at.parse::<usize>().ok()?).copied())
        .collect()
}
