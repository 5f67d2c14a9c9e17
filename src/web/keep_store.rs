//! The browser's own storage: a record for each job, and which of them was open last. Inside a
//! transaction nothing but the storage is awaited, since a transaction ends once it is left idle.

use idb::{Database, DatabaseEvent, Error, Factory, ObjectStoreParams, Transaction};
use idb::{TransactionMode, TransactionResult};
use js_sys::{Array, Function, Object, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{DomException, IdbDatabase, IdbTransaction};

const DATABASE: &str = "elbowroom";
const VERSION: u32 = 1;
const STORE: &str = "job";
/// Under this key stands the key of the job that was open last.
const OPEN: &str = "open";
/// A record's fields.
const TEXT: &str = "text";
const STORED_AT: &str = "stored_at_ms";

/// The key of a job in the storage.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct JobKey(String);

impl JobKey {
    /// A key that no job has yet.
    pub fn new() -> Self {
        // Two jobs of one millisecond differ by chance alone, in one of 2^52 cases not.
        Self(format!(
            "{}-{}",
            js_sys::Date::now(),
            js_sys::Math::random()
        ))
    }

    /// As text.
    pub fn as_str(&self) -> &str {
        &self.0
    }

    fn value(&self) -> JsValue {
        JsValue::from_str(&self.0)
    }
}

/// A job as it is stored.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Record {
    /// The plan's file.
    pub text: String,
    /// When it was stored, ms since the start of 1970.
    pub stored_at_ms: f64,
}

impl Record {
    fn to_value(&self) -> JsValue {
        let text = JsValue::from_str(&self.text);
        object([(TEXT, text), (STORED_AT, self.stored_at_ms.into())])
    }

    fn from_value(value: &JsValue) -> Option<Self> {
        let field = |name: &str| Reflect::get(value, &name.into()).ok();
        Some(Self {
            text: field(TEXT)?.as_string()?,
            stored_at_ms: field(STORED_AT)?.as_f64()?,
        })
    }
}

/// A plain object with these fields.
pub(super) fn object<const COUNT: usize>(fields: [(&str, JsValue); COUNT]) -> JsValue {
    let object = Object::new();
    for (name, value) in fields {
        // Nothing forbids a field in an object just made.
        let _ = Reflect::set(&object, &name.into(), &value);
    }
    object.into()
}

/// What is stored.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Stored {
    /// Nothing.
    Nothing,
    /// A job.
    Job(Record),
    /// Something that is no record of this page, as text.
    Foreign(String),
}

/// What may be written over.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Over {
    /// Only this; anything else was stored by another tab and stays.
    Only(Stored),
    /// Whatever is there.
    Anything,
}

/// Why the storage did not do as asked.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Fault {
    /// It lets nobody in.
    Refused,
    /// It has no room left.
    Full,
    /// What is there may not be written over.
    Occupied,
    /// Anything else.
    Failed,
}

impl From<Error> for Fault {
    fn from(error: Error) -> Self {
        let exception = match error {
            Error::DomException(exception) => Some(exception),
            Error::UpdateFailed(thrown)
            | Error::TransactionOpenFailed(thrown)
            | Error::TransactionCommitError(thrown) => thrown.dyn_into().ok(),
            _ => None,
        };
        Self::of(exception.as_ref())
    }
}

impl Fault {
    fn of(exception: Option<&DomException>) -> Self {
        match exception {
            Some(exception) if exception.name() == "QuotaExceededError" => Self::Full,
            _ => Self::Failed,
        }
    }
}

/// The storage, open.
pub(super) struct JobStore(IdbDatabase);

impl Drop for JobStore {
    fn drop(&mut self) {
        // A connection left open would hold up whoever wants to delete or change the storage.
        self.0.close();
    }
}

impl JobStore {
    /// Opens the storage, and makes its one store where there is none yet.
    pub async fn open() -> Result<Self, Fault> {
        let refused = |error: Error| match Fault::from(error) {
            Fault::Full => Fault::Full,
            _ => Fault::Refused,
        };
        let factory = Factory::new().map_err(refused)?;
        let mut request = factory.open(DATABASE, Some(VERSION)).map_err(refused)?;
        request.on_upgrade_needed(|event| {
            if let Ok(database) = event.database() {
                // Without its store every transaction fails, and the page says so.
                let _ = database.create_object_store(STORE, ObjectStoreParams::new());
            }
        });
        Ok(Self(request.await.map_err(refused)?.into()))
    }

    /// The job that was open last; none where there was none.
    pub async fn open_job(&self) -> Result<Option<(JobKey, Stored)>, Fault> {
        let raw = self.strict_transaction()?;
        let transaction = Transaction::from(raw.clone());
        let store = transaction.object_store(STORE)?;
        let Some(value) = store.get(JsValue::from_str(OPEN))?.await? else {
            return Ok(None);
        };
        if let Some(key) = value.as_string() {
            let key = JobKey(key);
            let stored = stored(&transaction, &key).await?;
            return Ok((stored != Stored::Nothing).then_some((key, stored)));
        }
        // Once there was one job, in this very place: it gets a key like any other.
        let key = JobKey::new();
        store.put(&value, Some(&key.value()))?.await?;
        let open = JsValue::from_str(OPEN);
        store.put(&key.value(), Some(&open))?.await?;
        committed(transaction, &raw).await?;
        Ok(Some((key, Stored::of(&value))))
    }

    /// What is stored under `key`.
    pub async fn read(&self, key: &JobKey) -> Result<Stored, Fault> {
        let database = Database::from(self.0.clone());
        let transaction = database.transaction(&[STORE], TransactionMode::ReadOnly)?;
        stored(&transaction, key).await
    }

    /// All jobs.
    pub async fn all(&self) -> Result<Vec<(JobKey, Stored)>, Fault> {
        let database = Database::from(self.0.clone());
        let transaction = database.transaction(&[STORE], TransactionMode::ReadOnly)?;
        let store = transaction.object_store(STORE)?;
        let keys = store.get_all_keys(None, None)?.await?;
        let values = store.get_all(None, None)?.await?;
        let keys = keys.iter().map(JsValue::as_string);
        let jobs = keys.zip(&values).filter_map(|(key, value)| {
            let key = key.filter(|key| key != OPEN)?;
            Some((JobKey(key), Stored::of(value)))
        });
        Ok(jobs.collect())
    }

    /// Stores `record` under `key`; done once it is on the disk. Where it `opens`, the page opens with
    /// it from now on.
    pub async fn write(
        &self,
        key: &JobKey,
        over: &Over,
        record: &Record,
        opens: bool,
    ) -> Result<(), Fault> {
        let raw = self.strict_transaction()?;
        let transaction = Transaction::from(raw.clone());
        if !over.allows(&stored(&transaction, key).await?, record) {
            return Err(Fault::Occupied);
        }
        let store = transaction.object_store(STORE)?;
        store.put(&record.to_value(), Some(&key.value()))?.await?;
        if opens {
            let open = JsValue::from_str(OPEN);
            store.put(&key.value(), Some(&open))?.await?;
        }
        committed(transaction, &raw).await
    }

    /// Takes the job of `key` out, where it is still the one that is `known`.
    pub async fn remove(&self, key: &JobKey, known: &Stored) -> Result<(), Fault> {
        let raw = self.strict_transaction()?;
        let transaction = Transaction::from(raw.clone());
        let there = stored(&transaction, key).await?;
        if there != *known && there != Stored::Nothing {
            return Err(Fault::Occupied);
        }
        let store = transaction.object_store(STORE)?;
        store.delete(key.value())?.await?;
        committed(transaction, &raw).await
    }

    /// A transaction that is done only once its data are on the disk. The bindings know no such
    /// option, so the browser's method is called by its name.
    fn strict_transaction(&self) -> Result<IdbTransaction, Fault> {
        let begin = || -> Result<IdbTransaction, JsValue> {
            let options = object([("durability", "strict".into())]);
            let method: Function = Reflect::get(&self.0, &"transaction".into())?.dyn_into()?;
            let stores = Array::of1(&STORE.into());
            method
                .call3(&self.0, &stores, &"readwrite".into(), &options)?
                .dyn_into()
        };
        begin().map_err(|thrown| Fault::of(thrown.dyn_ref()))
    }
}

impl Over {
    fn allows(&self, there: &Stored, record: &Record) -> bool {
        match (there, self) {
            (Stored::Nothing, _) | (_, Self::Anything) => true,
            // The same again: an attempt before this one came through, and nobody heard.
            (Stored::Job(job), _) if job == record => true,
            (there, Self::Only(known)) => there == known,
        }
    }
}

impl Stored {
    fn of(value: &JsValue) -> Self {
        match Record::from_value(value) {
            Some(record) => Self::Job(record),
            None => Self::Foreign(as_text(value)),
        }
    }
}

async fn stored(transaction: &Transaction, key: &JobKey) -> Result<Stored, Fault> {
    let store = transaction.object_store(STORE)?;
    let value = store.get(key.value())?.await?;
    Ok(value.map_or(Stored::Nothing, |value| Stored::of(&value)))
}

/// Waits until what was asked of a transaction is on the disk.
async fn committed(transaction: Transaction, raw: &IdbTransaction) -> Result<(), Fault> {
    match transaction.commit()?.await {
        Ok(TransactionResult::Committed) => Ok(()),
        Ok(TransactionResult::Aborted) | Err(_) => Err(Fault::of(raw.error().as_ref())),
    }
}

/// As much of a foreign value as text can hold.
fn as_text(value: &JsValue) -> String {
    value.as_string().unwrap_or_else(|| {
        js_sys::JSON::stringify(value)
            .ok()
            .and_then(|text| text.as_string())
            .unwrap_or_default()
    })
}
