//! Pictures of a visit: small ones, which the page makes of larger.

use super::PictureCoding;
use serde::{Deserialize, Serialize};
use std::sync::Arc;

/// A picture taken during a visit.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct VisitPicture {
    /// When it was taken.
    pub taken: Taken,
    /// How it is coded.
    pub coding: PictureCoding,
    /// Its bytes in Base64 (RFC 4648, section 4).
    pub data_base64: Arc<str>,
}

/// Before or after the cleaning.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Taken {
    /// Before it.
    Before,
    /// After it.
    After,
}
