//! Today's strip of a paddock: for how long, how wide, for whom; how far the fence goes on.

use super::at::{YardZone, told};
use super::strip_shown::comes_of;
use super::track;
use crate::device::clock;
use crate::form::Form;
use crate::keep::KeepError;
use crate::parts::{
    Action, ActionRow, Back, Caution, Choice, Field, Frame, FrameKind, Keyboard, Offer, Press,
    Rank, Sentence, Several, StopBlock,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::{Reading, World};
use leptos::prelude::*;
use tussock_core::animal::{AnimalId, PaddockId};
use tussock_flow::forms::strip::{Field as Which, STRIP_DAYS, Typed, Wrong};
use tussock_flow::routes::Route;
use tussock_flow::shelf::Shelf;
use tussock_flow::views::fields::{
    NoStrip, Out, StripSeen, left_standing, needs_with_grazers, one, strip_of,
};
use tussock_flow::words::{English, FieldWords, HorsesWords, PaddockWords, StripWords, UnitWords};

/// Today's strip of a paddock.
#[component]
pub fn Strip(
    /// Which.
    paddock: PaddockId,
) -> impl IntoView {
    let world = World::here();
    let form = Form::open(world, Route::Strip(paddock.clone()).to_string());
    let shelf = world.shelf(move || needs_with_grazers(clock::now()));
    let id = StoredValue::new(paddock);
    let typed = Memo::new(move |_| {
        let body = match shelf.get() {
            Some(Ok(shelf)) => id.with_value(|id| one(&shelf, id)),
            _ => None,
        };
        typed(form, &Typed::of(body.as_ref()))
    });
    // The plans behind it are worked out anew only where what is asked of the strip itself changed.
    let asked = Memo::new(move |_| typed.with(Typed::asked));
    let minute = world.minute();
    let seen = Memo::new(move |_| {
        let (now, asked) = (minute.get(), asked.get());
        match shelf.get() {
            Some(Ok(shelf)) => {
                let zone = YardZone::of(&shelf);
                id.with_value(|id| strip_of(&shelf, id, &asked, now, &zone))
            }
            _ => None,
        }
    });
    Fencing {
        world,
        form,
        shelf,
        id,
        typed,
        seen,
        wrong: RwSignal::new(None),
        failed: RwSignal::new(false),
        busy: RwSignal::new(false),
    }
    .screen()
}

#[derive(Clone, Copy)]
pub(super) struct Fencing {
    world: World,
    pub(super) form: Form,
    shelf: Reading<Result<Shelf, KeepError>>,
    id: StoredValue<PaddockId>,
    pub(super) typed: Memo<Typed>,
    seen: Memo<Option<StripSeen>>,
    wrong: RwSignal<Option<Wrong>>,
    failed: RwSignal<bool>,
    busy: RwSignal<bool>,
}

impl Fencing {
    fn screen(self) -> AnyView {
        let words = English::default();
        let opening = Signal::derive(move || self.shelf.with(Option::is_none));
        let here = Memo::new(move |_| self.seen.with(Option::is_some));
        let stopped = Memo::new(move |_| {
            self.seen.with(|seen| {
                let against = seen.as_ref()?.against.iter();
                against.copied().find(|against| against.stops)
            })
        });
        let said = Signal::derive(move || {
            self.seen.with(|seen| match seen {
                Some(seen) => words.strip_sentence(seen),
                None if opening.get() => words.opening().to_owned(),
                None => words.no_such_field().to_owned(),
            })
        });
        let name = Signal::derive(move || {
            let name = self.seen.with(|seen| {
                seen.as_ref()
                    .map(|seen| seen.field.body.name.as_str().to_owned())
            });
            name.unwrap_or_else(|| words.paddock().to_owned())
        });
        let back = self
            .id
            .with_value(|id| Route::Field(id.clone()).to_string());
        let foot = move || {
            let back = Press::from(back.clone());
            view! {
                <Saving failed=self.failed />
                <ActionRow back=Back { name: words.back().into(), press: back }>
                    {move || self.action(here.get() && stopped.with(Option::is_none))}
                </ActionRow>
            }
        };
        let head = move || match stopped.get() {
            Some(against) => {
                let why = words.strip_against(&against.what).why;
                view! {
                    <StopBlock order=words.strip_stopped(&against) rank=Rank::Sentence>
                        {why.map(|why| view! { <p>{why}</p> })}
                    </StopBlock>
                }
                .into_any()
            }
            None => view! { <Sentence said /> }.into_any(),
        };
        view! {
            <Frame kind=FrameKind::Flow what=name foot=foot>
                {head}
                <Unread shelf=self.shelf />
                <Show when=move || here.get()>
                    {draft_line(self.form)}
                    {move || stopped.with(Option::is_none).then(|| self.strip())}
                    {track::section(self)}
                </Show>
            </Frame>
        }
        .into_any()
    }

    /// What stands against it, what is asked, and what comes of it.
    fn strip(self) -> AnyView {
        let against = move || {
            let words = English::default();
            self.seen.with(|seen| {
                let seen = seen.as_ref()?;
                let against = seen
                    .against
                    .iter()
                    .map(|against| told(words.strip_against(&against.what)))
                    .collect_view();
                let unknown = seen
                    .flush_not_known
                    .then(|| view! { <Caution said=words.flush_not_known() /> });
                Some(view! { {told(words.strip_while_open())} {against} {unknown} })
            })
        };
        let comes = move || {
            self.seen
                .with(|seen| seen.as_ref().map(|seen| comes_of(&seen.strip)))
        };
        let line = move || {
            let words = English::default();
            self.seen.with(|seen| {
                seen.as_ref().map(|seen| match &seen.strip {
                    Ok(told) => words.strip_finds(told),
                    Err(why) => words.no_strip(why),
                })
            })
        };
        view! {
            {against}
            {self.asks()}
            <p role="status">{line}</p>
            {comes}
        }
        .into_any()
    }

    fn asks(self) -> AnyView {
        let words = English::default();
        let form = self.form;
        let days = STRIP_DAYS
            .into_iter()
            .map(|days| Offer::new(days, words.strip_days(days)))
            .collect();
        let backs = [false, true]
            .into_iter()
            .map(|stands| Offer::new(stands, words.back_fence(stands)))
            .collect();
        view! {
            {self.field(Which::Width)}
            <Choice
                legend=words.strip_days_asked()
                offers=days
                chosen=Signal::derive(move || Some(self.typed.with(|typed| typed.days)))
                on_choose=move |days: u32| form.set("days", days.to_string())
            />
            <Choice
                legend=words.back_fence_asked()
                offers=backs
                chosen=Signal::derive(move || Some(self.typed.with(|typed| typed.back_fence)))
                on_choose=move |stands: bool| form.set("back", u8::from(stands).to_string())
            />
            {move || self.whom()}
        }
        .into_any()
    }

    /// Who goes on it: all that graze there until somebody is left out.
    fn whom(self) -> AnyView {
        let words = English::default();
        let form = self.form;
        let out = Memo::new(move |_| {
            self.seen
                .with(|seen| seen.as_ref().map(|seen| seen.out.clone()))
                .unwrap_or_default()
        });
        let chosen = Signal::derive(move || {
            self.typed
                .with(|typed| typed.whom.clone())
                .unwrap_or_else(|| {
                    out.with(|out| {
                        let may = out.iter().filter(|out| out.most().is_some());
                        may.map(|out| out.id.clone()).collect()
                    })
                })
        });
        let flip = Callback::new(move |(id, on): (String, bool)| {
            let mut whom = chosen.get_untracked();
            whom.retain(|held| *held != id);
            if on {
                whom.push(id);
            }
            form.set("whom", whom.join(" "));
        });
        (move || {
            let (may, not): (Vec<Out>, Vec<Out>) =
                out.get().into_iter().partition(|out| out.most().is_some());
            let left_out = not
                .iter()
                .map(|out| view! { <Caution said=words.left_out(out) /> })
                .collect_view();
            let offers: Vec<Offer<String>> = may
                .iter()
                .map(|out| Offer::new(out.id.clone(), out.name.clone()).with(words.asks_of_strip(out)))
                .collect();
            if offers.is_empty() {
                return left_out.into_any();
            }
            view! {
                {left_out}
                <Several legend=words.strip_whom_asked() offers=offers chosen=chosen on_choose=flip />
            }
            .into_any()
        })
        .into_any()
    }

    pub(super) fn field(self, which: Which) -> AnyView {
        let words = English::default();
        let error = Signal::derive(move || match which {
            Which::Width => self.wrong.get().map(|wrong| words.strip_wrong(&wrong)),
            Which::TrackLength | Which::TrackSide | Which::TrackWidth | Which::Animals => None,
        });
        let echo = Signal::derive(move || {
            self.typed.with(|typed| match which {
                Which::Width => typed.width().ok().map(|width| words.on_ground(width)),
                _ => typed
                    .track_wrong(which)
                    .map(|wrong| words.parse_error(&wrong)),
            })
        });
        view! {
            <Field
                label=words.strip_field(which)
                hint=words.strip_field_hint(which).to_owned()
                value=Signal::derive(move || self.typed.with(|typed| typed.text(which).to_owned()))
                on_input=self.form.typed(which.key())
                error=error
                echo=echo
                keyboard=Keyboard::Text
            />
        }
        .into_any()
    }

    fn action(self, may: bool) -> AnyView {
        let words = English::default();
        let nobody = Memo::new(move |_| {
            self.seen.with(|seen| {
                seen.as_ref()
                    .is_some_and(|seen| seen.strip == Err(NoStrip::NobodyOut))
            })
        });
        (move || {
            if !may {
                let back = self.id.with_value(|id| Route::Field(id.clone()));
                return view! { <Action says=words.to_grass_today() press=if self.seen.with(Option::is_some) { back } else { Route::Paddock }.to_string() /> }
                    .into_any();
            }
            if nobody.get() {
                let first = match self.shelf.get() {
                    Some(Ok(shelf)) => shelf.animals().into_iter().next().map(|animal| animal.id),
                    _ => None,
                };
                let route = first.map_or(Route::Paddock, |id: AnimalId| Route::Grazing(id));
                return view! { <Action says=words.say_who_goes_out() press=route.to_string() /> }
                    .into_any();
            }
            let save = Callback::new(move |()| self.save());
            view! { <Action says=words.save_strip() press=save busy=self.busy /> }.into_any()
        })
        .into_any()
    }

    fn save(self) {
        if self.busy.get_untracked() {
            return;
        }
        let id = self.id.get_value();
        let act = self.seen.with_untracked(|seen| {
            let field = &seen.as_ref()?.field;
            let typed = self.typed.get_untracked();
            Some(typed.act(&id, &field.body, left_standing(field)))
        });
        match act {
            None => {}
            Some(Err(wrong)) => self.wrong.set(Some(wrong)),
            Some(Ok(act)) => {
                self.wrong.set(None);
                self.failed.set(false);
                self.busy.set(true);
                leptos::task::spawn_local(async move {
                    let done = self.form.save(act).await;
                    self.busy.try_set(false);
                    if done.is_ok() {
                        self.world.go(&Route::Field(id));
                    } else {
                        self.failed.try_set(true);
                    }
                });
            }
        }
    }
}

/// What is typed: a field that nobody touched shows what is stored.
fn typed(form: Form, stored: &Typed) -> Typed {
    let typed = Which::ALL.into_iter().fold(stored.clone(), |typed, which| {
        match form.held(which.key()) {
            Some(text) => typed.with(which, text),
            None => typed,
        }
    });
    Typed {
        days: form
            .held("days")
            .and_then(|days| days.parse().ok())
            .filter(|days| STRIP_DAYS.contains(days))
            .unwrap_or(stored.days),
        back_fence: form
            .held("back")
            .map_or(stored.back_fence, |held| held == "1"),
        whom: form
            .held("whom")
            .map(|whom| whom.split_whitespace().map(str::to_owned).collect()),
        ..typed
    }
}
