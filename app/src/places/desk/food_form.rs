//! A food of the yard's own: what it is, its label, its pack and price; and a new one.

use super::{food_lines, paste};
use crate::form::Form;
use crate::keep::KeepError;
use crate::parts::{
    Action, ActionRow, Back, Caution, Choice, Field, Frame, FrameKind, Keyboard, Offer, Press,
    Quiet, QuietRow, Sentence,
};
use crate::places::shed::yard;
use crate::places::{Saving, Unread, draft_line};
use crate::world::{Reading, World};
use leptos::prelude::*;
use tussock_core::animal::FoodId;
use tussock_core::log::bodies::{FoodV2, LabelBasis};
use tussock_core::ration::FoodClass;
use tussock_core::sources::RecordId;
use tussock_flow::acts::Act;
use tussock_flow::forms::delivery::{of_word, word_of};
use tussock_flow::forms::food::{
    BASES, CLASSES, Checked, Field as Which, LineTyped, Typed, Wrong, lines_of, lines_text,
};
use tussock_flow::routes::Route;
use tussock_flow::shelf::Shelf;
use tussock_flow::views::foods::{currency, needs, one};
use tussock_flow::words::{DeskWords, English, FoodsWords, HorsesWords, RationWords};

/// A new food.
#[component]
pub fn NewFood() -> impl IntoView {
    FoodForm::of(&Route::NewFood, None).screen()
}

/// A food that is there.
#[component]
pub fn Food(
    /// Which.
    food: FoodId,
) -> impl IntoView {
    FoodForm::of(&Route::Food(food.clone()), Some(food)).screen()
}

/// What the parts of the form share.
#[derive(Clone, Copy)]
pub(super) struct FoodForm {
    world: World,
    shelf: Reading<Result<Shelf, KeepError>>,
    pub(super) form: Form,
    /// The food that is changed, once it is read; `None` for a new one.
    there: Memo<Option<FoodV2>>,
    id: StoredValue<Option<FoodId>>,
    /// What is typed, over what is stored.
    pub(super) typed: Memo<Typed>,
    /// What the label check says of it.
    pub(super) checked: Memo<Checked>,
    /// Whether saving was tried.
    tried: RwSignal<bool>,
    /// What is wrong now, once saving was tried: what was mended since is not told any more.
    pub(super) wrong: Memo<Vec<Wrong>>,
    failed: RwSignal<bool>,
    busy: RwSignal<bool>,
}

impl FoodForm {
    fn of(route: &Route, id: Option<FoodId>) -> Self {
        let world = World::here();
        let form = Form::open(world, route.to_string());
        let shelf = world.shelf(needs);
        let id = StoredValue::new(id);
        let there = Memo::new(move |_| {
            let id = id.get_value()?;
            match shelf.get() {
                Some(Ok(shelf)) => one(&shelf, &id),
                _ => None,
            }
        });
        let usual = Memo::new(move |_| match shelf.get() {
            Some(Ok(shelf)) => currency(&shelf),
            _ => String::new(),
        });
        let typed = Memo::new(move |_| typed(form, there.get().as_ref(), &usual.get()));
        let tried = RwSignal::new(false);
        let wrong = Memo::new(move |_| {
            let about = yard(world);
            let food = FoodId(String::new());
            let made = |typed: &Typed| there.with(|there| typed.act(&about, &food, there.as_ref()));
            match tried.get().then(|| typed.with(made)) {
                Some(Err(wrong)) => wrong,
                Some(Ok(_)) | None => Vec::new(),
            }
        });
        Self {
            world,
            shelf,
            form,
            there,
            id,
            typed,
            checked: Memo::new(move |_| typed.with(Typed::checked)),
            tried,
            wrong,
            failed: RwSignal::new(false),
            busy: RwSignal::new(false),
        }
    }

    /// Writes the lines of the label into the draft.
    pub(super) fn set_lines(self, lines: &[LineTyped]) {
        self.form.set("lines", lines_text(lines));
    }

    fn screen(self) -> AnyView {
        let words = English::default();
        let is_new = self.id.with_value(Option::is_none);
        let opening = Signal::derive(move || self.shelf.with(Option::is_none));
        let missing =
            Memo::new(move |_| !is_new && !opening.get() && self.there.with(Option::is_none));
        let said = Signal::derive(move || {
            if opening.get() {
                words.opening().to_owned()
            } else if is_new {
                words.which_food().to_owned()
            } else {
                self.there.with(|there| match there {
                    Some(food) => food.name.as_str().to_owned(),
                    None => words.no_such_food().to_owned(),
                })
            }
        });
        let action = move || {
            if missing.get() {
                let list = Route::Foods.to_string();
                view! { <Action says=words.foods() press=list /> }.into_any()
            } else {
                let save = Callback::new(move |()| self.save());
                let busy = Signal::derive(move || self.busy.get() || opening.get());
                view! { <Action says=words.save_food() press=save busy /> }.into_any()
            }
        };
        let foot = move || {
            view! {
                <Saving failed=self.failed />
                <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Foods.to_string()) }>
                    {action}
                </ActionRow>
            }
        };
        view! {
            <Frame kind=FrameKind::Flow what=words.desk() foot=foot>
                <Sentence said />
                <Unread shelf=self.shelf />
                {draft_line(self.form)}
                <Show when=move || !missing.get()>{move || self.fields(is_new)}</Show>
            </Frame>
        }
        .into_any()
    }

    fn fields(self, is_new: bool) -> AnyView {
        let words = English::default();
        let form = self.form;
        let classes = CLASSES
            .iter()
            .map(|(class, _)| {
                Offer::new(*class, words.food_class(*class)).with(words.food_class_means(*class))
            })
            .collect();
        let stands_in = move || {
            let food = self
                .typed
                .with(|typed| typed.profile.filter(|_| !typed.has_label()))?;
            Some(view! { <Caution said=words.stands_in(food) /> })
        };
        let price = move || {
            let price = self.typed.with(Typed::price_per_kg)?;
            Some(words.per_kg(price))
        };
        let remove = Callback::new(move |()| self.remove());
        view! {
            {self.field(Which::Name, "name", |typed| typed.name.clone())}
            <Choice
                legend=words.food_class_asked()
                offers=classes
                chosen=Signal::derive(move || self.typed.with(|typed| typed.class))
                on_choose=move |class: FoodClass| form.set("class", word_of(&CLASSES, Some(class)))
                hint=self.hint(Wrong::NoClass)
            />
            {stands_in}
            <h2>{words.label_head()}</h2>
            <Caution said=words.label_caution() />
            {paste::view(self)}
            {self.basis()}
            {food_lines::view(self)}
            {self.field(Which::Dry, "dry", |typed| typed.dry.clone())}
            {self.field(Which::Serving, "serving", |typed| typed.serving.clone())}
            {self.field(Which::Rate, "rate", |typed| typed.rate.clone())}
            <h2>{words.pack_head()}</h2>
            {self.field(Which::Pack, "pack", |typed| typed.pack.clone())}
            {self.field(Which::Price, "price", |typed| typed.price.clone())}
            {self.field(Which::Currency, "currency", |typed| typed.currency.clone())}
            <p role="status">{price}</p>
            {self.field(Which::Scoop, "scoop", |typed| typed.scoop.clone())}
            {self.of_the_whole()}
            {(!is_new).then(|| view! { <QuietRow><Quiet says=words.remove_food() press=remove /></QuietRow> })}
        }
        .into_any()
    }

    fn basis(self) -> AnyView {
        let words = English::default();
        let form = self.form;
        let offers = BASES
            .iter()
            .map(|(basis, _)| Offer::new(*basis, words.food_basis(*basis)))
            .collect();
        view! {
            <Choice
                legend=words.label_basis_asked()
                offers=offers
                chosen=Signal::derive(move || self.typed.with(|typed| typed.basis))
                on_choose=move |basis: LabelBasis| form.set("basis", word_of(&BASES, Some(basis)))
                hint=self.hint(Wrong::NoBasis)
            />
        }
        .into_any()
    }

    /// The line under a choice: what is wrong with it.
    fn hint(self, which: Wrong) -> Signal<Option<String>> {
        let words = English::default();
        Signal::derive(move || {
            let wrong = self.wrong.with(|wrong| wrong.contains(&which));
            wrong.then(|| words.food_wrong(&which))
        })
    }

    fn field(self, which: Which, key: &'static str, text: fn(&Typed) -> String) -> AnyView {
        let words = English::default();
        let error = Signal::derive(move || {
            self.wrong.with(|wrong| {
                let own = wrong.iter().find(|wrong| wrong.field() == Some(which));
                own.map(|wrong| words.food_wrong(wrong))
            })
        });
        let keyboard = match which {
            Which::Price | Which::Dry | Which::Rate => Keyboard::Decimal,
            Which::Name | Which::Currency | Which::Serving | Which::Scoop | Which::Pack => {
                Keyboard::Text
            }
        };
        view! {
            <Field
                label=words.food_field(which)
                hint=words.food_field_hint(which).map(str::to_owned)
                value=Signal::derive(move || self.typed.with(text))
                on_input=self.form.typed(key)
                error=error
                unit=words.food_field_unit(which).map(str::to_owned)
                keyboard=keyboard
            />
        }
        .into_any()
    }

    /// What is found of no line alone, and what kept it from being saved and stands under no field.
    fn of_the_whole(self) -> AnyView {
        let words = English::default();
        let found = move || {
            self.checked.with(|checked| {
                checked
                    .of_the_whole()
                    .map(food_lines::finding)
                    .collect_view()
            })
        };
        let wrong = move || {
            self.wrong.with(|wrong| {
                let kept = wrong.iter().find(|wrong| {
                    matches!(wrong, Wrong::Line(..) | Wrong::Label(..) | Wrong::Log(_))
                });
                kept.map(|wrong| view! { <Caution said=words.food_wrong(wrong) /> })
            })
        };
        view! {
            <div role="status">{found}</div>
            <div role="alert">{wrong}</div>
        }
        .into_any()
    }

    fn save(self) {
        let before = self.there.get_untracked();
        let id = self
            .id
            .get_value()
            .unwrap_or_else(|| FoodId(self.form.id("id")));
        let typed = self.typed.get_untracked();
        match typed.act(&yard(self.world), &id, before.as_ref()) {
            Ok(act) => {
                self.tried.set(false);
                self.write(act);
            }
            Err(_) => self.tried.set(true),
        }
    }

    fn remove(self) {
        if let Some(id) = self.id.get_value() {
            self.write(Act::Remove(RecordId(id.0)));
        }
    }

    fn write(self, act: Act) {
        if self.busy.get_untracked() {
            return;
        }
        self.busy.set(true);
        self.failed.set(false);
        leptos::task::spawn_local(async move {
            let done = self.form.save(act).await;
            self.busy.try_set(false);
            if done.is_ok() {
                self.world.go(&Route::Foods);
            } else {
                self.failed.try_set(true);
            }
        });
    }
}

/// What is typed: a field that nobody touched shows what is stored, the currency what is usual here.
fn typed(form: Form, there: Option<&FoodV2>, usual: &str) -> Typed {
    let stored = there.map(Typed::of).unwrap_or_default();
    let held = |field: &str, stored: &str| form.held(field).unwrap_or_else(|| stored.to_owned());
    let code = if stored.currency.is_empty() {
        usual
    } else {
        &stored.currency
    };
    Typed {
        name: held("name", &stored.name),
        class: form
            .held("class")
            .and_then(|word| of_word(&CLASSES, &word))
            .or(stored.class),
        profile: stored.profile,
        basis: form
            .held("basis")
            .and_then(|word| of_word(&BASES, &word))
            .or(stored.basis),
        dry: held("dry", &stored.dry),
        serving: held("serving", &stored.serving),
        rate: held("rate", &stored.rate),
        scoop: held("scoop", &stored.scoop),
        pack: held("pack", &stored.pack),
        price: held("price", &stored.price),
        currency: held("currency", code),
        lines: form
            .held("lines")
            .map_or(stored.lines, |lines| lines_of(&lines)),
    }
}
