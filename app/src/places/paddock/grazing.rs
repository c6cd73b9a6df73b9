//! How an animal or a group goes out to grass. What its plan can carry stands there before anything is saved.

use super::at::YardZone;
use super::carried::carried_view;
use crate::device::clock;
use crate::form::Form;
use crate::keep::KeepError;
use crate::parts::{
    Action, ActionRow, Back, Caution, Choice, Field, Frame, FrameKind, Offer, Press, Quiet,
    QuietRow, Select, Sentence,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::{Reading, World};
use leptos::prelude::*;
use tussock_core::animal::{AnimalId, PaddockId};
use tussock_core::log::bodies::{GrazingMinutes, GrazingV1};
use tussock_core::units::{LocalDate, Zone};
use tussock_flow::forms::grazing::{
    Field as Which, OFFERED, Typed, Used, Wrong, act, read_time, stays_in, time_text,
};
use tussock_flow::routes::Route;
use tussock_flow::shelf::Shelf;
use tussock_flow::views::grazing::{Carried, GoesOut, carried, goes_out, needs};
use tussock_flow::words::{English, GrazingWords, HorsesWords, PlanScreenWords};

/// With a muzzle, and without, as a draft keeps them.
const MUZZLES: [(bool, &str); 2] = [(false, "without"), (true, "with")];

/// How an animal or a group goes out to grass.
#[component]
pub fn Grazing(
    /// Which: the id of an animal or of a group.
    of: AnimalId,
) -> impl IntoView {
    GrazingForm::open(of).screen()
}

#[derive(Clone, Copy)]
struct GrazingForm {
    world: World,
    form: Form,
    id: StoredValue<AnimalId>,
    shelf: Reading<Result<Shelf, KeepError>>,
    opening: Signal<bool>,
    out: Memo<Option<GoesOut>>,
    typed: Signal<Typed>,
    /// What the plan can carry of what is asked for, as far as that can be read.
    carried: Memo<Option<Carried>>,
    wrong: RwSignal<Vec<Wrong>>,
    failed: RwSignal<bool>,
    busy: RwSignal<bool>,
}

impl GrazingForm {
    fn open(of: AnimalId) -> Self {
        let world = World::here();
        let form = Form::open(world, Route::Grazing(of.clone()).to_string());
        let id = StoredValue::new(of);
        let shelf = world.shelf(move || id.with_value(needs));
        let minute = world.minute();
        let out = Memo::new(move |_| match (shelf.get(), minute.get()) {
            (Some(Ok(shelf)), now) => {
                let zone = YardZone::of(&shelf);
                id.with_value(|id| goes_out(&shelf, id, now, &zone))
            }
            _ => None,
        });
        // A field that nobody touched shows what was decided last.
        let typed = Signal::derive(move || {
            let stored =
                out.with(|out| Typed::of(out.as_ref().and_then(|out| out.before.as_ref())));
            Typed {
                paddock: form.held("paddock").map_or(stored.paddock, |held| {
                    (!held.is_empty()).then_some(PaddockId(held))
                }),
                time: form.held("time").unwrap_or(stored.time),
                muzzle: form.held("muzzle").map_or(stored.muzzle, |held| {
                    MUZZLES.iter().any(|(on, key)| *on && *key == held)
                }),
                used: form
                    .held("used")
                    .map_or(stored.used, |held| Used::of_key(&held)),
                since: form.held("since").unwrap_or(stored.since),
            }
        });
        let asked = Memo::new(move |_| {
            out.with(|out| {
                let out = out.as_ref()?;
                typed.with(|typed| typed.body(out.before.as_ref(), out.today).ok())
            })
        });
        let carried = Memo::new(move |_| match (shelf.get(), minute.get(), asked.get()) {
            (Some(Ok(shelf)), now, Some(asked)) => out.with(|out| {
                let whose = &out.as_ref()?.whose;
                carried(&shelf, whose, &asked, now, &YardZone::of(&shelf))
            }),
            _ => None,
        });
        Self {
            world,
            form,
            id,
            shelf,
            opening: Signal::derive(move || shelf.with(Option::is_none)),
            out,
            typed,
            carried,
            wrong: RwSignal::new(Vec::new()),
            failed: RwSignal::new(false),
            busy: RwSignal::new(false),
        }
    }

    fn screen(self) -> AnyView {
        let words = English::default();
        let missing = Memo::new(move |_| !self.opening.get() && self.out.with(Option::is_none));
        let said = Signal::derive(move || {
            self.out.with(|out| match out {
                Some(out) => words.how_it_goes_out(&out.name),
                None if self.opening.get() => words.opening().to_owned(),
                None => words.nobody_to_go_out().to_owned(),
            })
        });
        let back = move || {
            if missing.get_untracked() {
                Route::Paddock
            } else {
                Route::PaddockOf(self.id.get_value())
            }
        };
        let action = move || {
            if missing.get() {
                let paddock = Route::Paddock.to_string();
                view! { <Action says=tussock_flow::words::PaddockWords::paddock(&words) press=paddock /> }.into_any()
            } else {
                let save = Callback::new(move |()| self.save());
                let busy = Signal::derive(move || self.busy.get() || self.opening.get());
                view! { <Action says=words.save_turnout() press=save busy /> }.into_any()
            }
        };
        let goes = Memo::new(move |_| {
            self.out
                .with(|out| out.as_ref().is_some_and(GoesOut::is_out_by_it))
        });
        let stop = Callback::new(move |()| self.stop());
        let foot = move || {
            view! {
                {move || goes.get().then(|| view! {
                    <QuietRow><Quiet says=words.does_not_go_out() press=stop /></QuietRow>
                })}
                <Saving failed=self.failed />
                <ActionRow back=Back { name: words.back().into(), press: Press::from(back().to_string()) }>
                    {action}
                </ActionRow>
            }
        };
        view! {
            <Frame kind=FrameKind::Flow what=tussock_flow::words::PaddockWords::paddock(&words) foot=foot>
                <Sentence said />
                <Unread shelf=self.shelf />
                {draft_line(self.form)}
                <Show when=move || self.out.with(Option::is_some)>{move || self.fields()}</Show>
            </Frame>
        }
        .into_any()
    }

    fn fields(self) -> AnyView {
        let words = English::default();
        let stopped = self.out.with_untracked(|out| {
            let before = out.as_ref().and_then(|out| out.before.as_ref());
            before.is_some_and(|before| before.stopped)
        });
        view! {
            {stopped.then(|| view! { <p class="soft">{words.stays_in_now()}</p> })}
            {self.time()}
            {self.muzzle()}
            {move || self.paddocks()}
            {self.used_to_it()}
            <h2>{words.carries_head()}</h2>
            {move || self.answer()}
            <p>{words.never_more_than_carried()}</p>
        }
        .into_any()
    }

    fn paddocks(self) -> AnyView {
        let words = English::default();
        let offers: Vec<(String, String)> = self.out.with(|out| {
            let paddocks = out.iter().flat_map(|out| &out.paddocks);
            paddocks
                .map(|(id, name)| (id.0.clone(), name.clone()))
                .collect()
        });
        let chosen = Signal::derive(move || {
            self.typed.with(|typed| {
                typed
                    .paddock
                    .as_ref()
                    .map(|id| id.0.clone())
                    .unwrap_or_default()
            })
        });
        let choose = Callback::new(move |id: String| self.form.set("paddock", id));
        let select = (!offers.is_empty()).then(|| {
            view! {
                <Select
                    label=words.which_paddock()
                    nothing=words.no_one_paddock()
                    offers=offers
                    chosen=chosen
                    on_choose=choose
                />
            }
        });
        view! {
            {select}
            <p class="soft small">{words.no_one_paddock_means()}</p>
        }
        .into_any()
    }

    fn time(self) -> AnyView {
        let words = English::default();
        let form = self.form;
        let read = Memo::new(move |_| {
            self.typed
                .with(|typed| read_time(&typed.time).ok().map(GrazingMinutes::get))
        });
        let offers = OFFERED
            .into_iter()
            .map(|minutes| Offer::new(minutes, words.so_long(minutes)))
            .collect();
        let choose = Callback::new(move |minutes: i64| form.set("time", time_text(minutes)));
        let echo = Signal::derive(move || {
            Some(
                read.get()
                    .map_or_else(String::new, |minutes| words.so_long(minutes)),
            )
        });
        view! {
            <Choice legend=words.how_long_out() offers=offers chosen=read on_choose=choose />
            <Field
                label=words.another_time()
                hint=words.another_time_hint()
                value=Signal::derive(move || self.typed.with(|typed| typed.time.clone()))
                on_input=form.typed("time")
                error=self.error(Which::Time)
                echo=echo
            />
        }
        .into_any()
    }

    fn muzzle(self) -> AnyView {
        let words = English::default();
        let form = self.form;
        let on = Memo::new(move |_| self.typed.with(|typed| typed.muzzle));
        let offers = MUZZLES
            .iter()
            .map(|(on, _)| Offer::new(*on, words.muzzle_on(*on)))
            .collect();
        let choose = Callback::new(move |chosen: bool| {
            if let Some((_, key)) = MUZZLES.iter().find(|(on, _)| *on == chosen) {
                form.set("muzzle", (*key).to_owned());
            }
        });
        let caution = words.muzzle_caution();
        let care = StoredValue::new(caution);
        view! {
            <Choice
                legend=words.muzzle_asked()
                offers=offers
                chosen=Signal::derive(move || Some(on.get()))
                on_choose=choose
            />
            <Show when=move || on.get()>
                <Caution said=care.with_value(|care| care.sentence.clone()) why=words.why()>
                    <p>{care.with_value(|care| care.why.clone())}</p>
                </Caution>
            </Show>
        }
        .into_any()
    }

    fn used_to_it(self) -> AnyView {
        let words = English::default();
        let form = self.form;
        let used = Memo::new(move |_| self.typed.with(|typed| typed.used));
        let offers = Used::ALL
            .into_iter()
            .map(|used| Offer::new(used, words.used(used)))
            .collect();
        let choose = Callback::new(move |used: Used| form.set("used", used.key().to_owned()));
        view! {
            <Choice
                legend=words.used_asked()
                hint=words.used_hint().to_owned()
                offers=offers
                chosen=used
                on_choose=choose
            />
            <Show when=move || used.get() == Some(Used::On)>
                <Field
                    label=words.used_since()
                    hint=words.used_since_hint()
                    value=Signal::derive(move || self.typed.with(|typed| typed.since.clone()))
                    on_input=form.typed("since")
                    error=self.error(Which::Since)
                />
            </Show>
        }
        .into_any()
    }

    /// What is wrong with a field; what no field is to blame for stands under the time.
    fn error(self, which: Which) -> Signal<Option<String>> {
        let words = English::default();
        Signal::derive(move || {
            self.wrong.with(|wrong| {
                let mut all = wrong.iter();
                let own = |wrong: &&Wrong| {
                    wrong.field() == Some(which)
                        || (wrong.field().is_none() && which == Which::Time)
                };
                all.find(own).map(|wrong| words.grazing_wrong(wrong))
            })
        })
    }

    /// What the plan can carry of what is asked for.
    fn answer(self) -> AnyView {
        let words = English::default();
        self.carried.with(|carried| match carried {
            Some(carried) => carried_view(carried),
            None => view! { <p class="soft">{words.say_how_long_first()}</p> }.into_any(),
        })
    }

    fn save(self) {
        let Some(out) = self.out.get_untracked() else {
            return;
        };
        let today = self.at_the_tap(&out);
        let decided = self
            .typed
            .with_untracked(|typed| typed.body(out.before.as_ref(), today));
        match decided {
            Ok(decided) => self.write(&out, decided),
            Err(wrong) => self.wrong.set(wrong),
        }
    }

    fn stop(self) {
        let Some(out) = self.out.get_untracked() else {
            return;
        };
        if let Some(before) = &out.before {
            self.write(&out, stays_in(before, self.at_the_tap(&out)));
        }
    }

    fn write(self, out: &GoesOut, decided: GrazingV1) {
        if self.busy.get_untracked() {
            return;
        }
        self.wrong.set(Vec::new());
        self.failed.set(false);
        self.busy.set(true);
        let act = act(&out.whose.subject(), decided, &self.form.id("id"));
        leptos::task::spawn_local(async move {
            let done = self.form.save(act).await;
            self.busy.try_set(false);
            if done.is_ok() {
                self.world.go(&Route::PaddockOf(self.id.get_value()));
            } else {
                self.failed.try_set(true);
            }
        });
    }

    /// The day of the yard at the tap itself: a screen left open over midnight decides from the new day on.
    fn at_the_tap(self, out: &GoesOut) -> LocalDate {
        let zone = self
            .shelf
            .with_untracked(|shelf| YardZone::read(shelf.as_ref()));
        zone.to_local(clock::now()).date.max(out.today)
    }
}
