//! The kept jobs as a dialog: to find one, open it, name it, copy it, and to take them all elsewhere.

use super::file_button::FileButton;
use super::focus::{focus_first, focus_on};
use super::over_page::OverPage;
use super::rest::{Press, pressed};
use super::shelf::{Entry, Shelf, shelf_text};
use super::store::Store;
use crate::editor::Action;
use crate::report::words::{Label, ShelfLabel};
use leptos::html;
use leptos::prelude::*;
use wasm_bindgen::JsValue;

/// The button that shows the jobs.
#[component]
pub(super) fn ShelfButton() -> impl IntoView {
    let shelf = expect_context::<Shelf>();
    view! {
        <button type="button" aria-haspopup="dialog" on:click=move |_| pressed(Press::ShowJobs(shelf))>
            {fixed!(Shelf::ShelfLabel::Jobs)}
        </button>
    }
}

/// The jobs.
#[component]
pub(super) fn ShelfDialog() -> impl IntoView {
    let shelf = expect_context::<Shelf>();
    view! {
        <OverPage name="shelf" title=Label::Shelf(ShelfLabel::Jobs) is_open=shelf.is_open>
            <OpenJob/>
            <Kept/>
            <p class="fine">{shelf_text(ShelfLabel::Meaning)}</p>
        </OverPage>
    }
}

/// Name and note of the job on the page.
#[component]
fn OpenJob() -> impl IntoView {
    let store = expect_context::<Store>();
    let set = move |change: &dyn Fn(&mut (String, String))| {
        let plan = store.plan_now();
        let mut names = (plan.title.clone(), plan.note.clone());
        change(&mut names);
        let (title, note) = names;
        store.act(Action::SetTitle { title, note });
    };
    let field = move |id: &'static str, label: ShelfLabel, of_note: bool| {
        view! {
            <div class="field">
                <label for=id>{shelf_text(label)}</label>
                <input
                    id=id
                    type="text"
                    maxlength="200"
                    prop:value=move || store.plan.with(|plan| {
                        if of_note { plan.note.clone() } else { plan.title.clone() }
                    })
                    on:change=move |event| {
                        let text = event_target_value(&event);
                        set(&|names| if of_note { names.1.clone_from(&text) } else { names.0.clone_from(&text) });
                    }
                />
            </div>
        }
    };
    view! {
        <div class="shelf-open-job">
            {field("shelf-name", ShelfLabel::ThisJob, false)}
            {field("shelf-note", ShelfLabel::Note, true)}
        </div>
    }
}

#[component]
fn Kept() -> impl IntoView {
    let store = expect_context::<Store>();
    let shelf = expect_context::<Shelf>();
    let words = RwSignal::new(String::new());
    let chosen = Callback::new(move |file| shelf.add_from(store, file));
    let found = move || {
        let words = words.get();
        shelf.entries.with(|entries| {
            let entries = entries.iter().flatten();
            entries
                .filter(|entry| entry.has(&words))
                .cloned()
                .collect::<Vec<_>>()
        })
    };
    let nothing = move || {
        shelf.entries.with(|entries| match entries {
            Some(entries) if entries.is_empty() => Some(ShelfLabel::None),
            Some(entries) if !entries.iter().any(|entry| entry.has(&words.get())) => {
                Some(ShelfLabel::NoneFound)
            }
            _ => None,
        })
    };
    let put_back_button = NodeRef::<html::Button>::new();
    Effect::new(move |_| {
        // The row that was pressed is gone, and the focus with it.
        if let Some(button) = put_back_button.get() {
            focus_on(&button);
        }
    });
    let put_back = move |_| {
        focus_first("#shelf-find");
        shelf.put_back();
    };
    let deleted = move || {
        let entry = shelf.deleted.get()?;
        let title = entry
            .plan
            .map(|plan| plan.title.clone())
            .unwrap_or_default();
        Some(view! {
            <span>{shelf_text(ShelfLabel::Deleted)} ": " {title} " "</span>
            <button node_ref=put_back_button type="button" on:click=put_back>
                {shelf_text(ShelfLabel::PutBack)}
            </button>
        })
    };
    view! {
        <div class="field">
            <label for="shelf-find">{shelf_text(ShelfLabel::Find)}</label>
            <input
                id="shelf-find"
                type="search"
                on:input=move |event| words.set(event_target_value(&event))
            />
        </div>
        <p role="status" class="shelf-said">{move || shelf.said.get()} {deleted}</p>
        {move || nothing().map(|label| view! { <p>{shelf_text(label)}</p> })}
        <ul class="shelf-jobs">
            <For
                each=found
                key=|entry| (entry.key.as_str().to_owned(), entry.stored_at_ms().to_bits())
                let:entry
            >
                <Row entry/>
            </For>
        </ul>
        <div class="more-buttons">
            <button type="button" on:click=move |_| shelf.save_all()>
                {shelf_text(ShelfLabel::SaveAll)}
            </button>
            <FileButton
                label=shelf_text(ShelfLabel::AddFrom)
                id="shelf-file"
                accept=".json,application/json"
                chosen
            />
        </div>
    }
}

#[component]
fn Row(entry: Entry) -> impl IntoView {
    let store = expect_context::<Store>();
    let shelf = expect_context::<Shelf>();
    let is_open = store.keeper.key().as_ref() == Some(&entry.key);
    let picture = entry.picture(store);
    let entry = StoredValue::new(entry);
    let saved = {
        let moment = entry.with_value(Entry::stored_at_ms);
        let date = js_sys::Date::new(&JsValue::from_f64(moment));
        String::from(date.to_locale_string("en-US", &JsValue::UNDEFINED))
    };
    let Some(plan) = entry.with_value(|entry| entry.plan.clone()) else {
        return view! {
            <li class="shelf-job">
                <p>{shelf_text(ShelfLabel::Unreadable)}</p>
                <div class="more-buttons">
                    <button
                        type="button"
                        on:click=move |_| entry.with_value(Entry::save)
                    >
                        {shelf_text(ShelfLabel::SaveEntry)}
                    </button>
                </div>
            </li>
        }
        .into_any();
    };
    let title = plan.title.clone();
    let named = move |label: ShelfLabel| format!("{}: {title}", shelf_text(label));
    view! {
        <li class="shelf-job">
            <img src=picture alt="" />
            <div>
                <input
                    type="text"
                    maxlength="200"
                    aria-label=named(ShelfLabel::Name)
                    value=plan.title.clone()
                    on:change=move |event| {
                        shelf.rename(store, entry.get_value(), event_target_value(&event));
                    }
                />
                <p class="fine">
                    {saved} {is_open.then(|| format!(", {}", shelf_text(ShelfLabel::OpenNow)))}
                </p>
            </div>
            <div class="more-buttons">
                <button
                    type="button"
                    aria-label=named(ShelfLabel::Open)
                    disabled=is_open
                    on:click=move |_| entry.with_value(|entry| shelf.take(store, entry))
                >
                    {shelf_text(ShelfLabel::Open)}
                </button>
                <button
                    type="button"
                    aria-label=named(ShelfLabel::Copy)
                    on:click=move |_| entry.with_value(|entry| shelf.copy(entry))
                >
                    {shelf_text(ShelfLabel::Copy)}
                </button>
                <button
                    type="button"
                    aria-label=named(ShelfLabel::Delete)
                    disabled=is_open
                    on:click=move |_| shelf.delete(entry.get_value())
                >
                    {shelf_text(ShelfLabel::Delete)}
                </button>
            </div>
        </li>
    }
    .into_any()
}
