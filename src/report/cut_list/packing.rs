//! Pieces cut from stock of several lengths, so that the least is bought.

use serde::Serialize;

/// Two lengths nearer than this are one, m. Of the computation.
const SAME: f64 = 1e-9;
/// What a bar more counts, m: of two ways that buy as much, the one with fewer bars. Of the
/// computation.
const BAR: f64 = 1e-6;
/// How often bars are taken apart and cut anew, of how many bars at most, and how many pieces together.
const ROUNDS: usize = 8;
const ANEW_BARS: usize = 64;
const ANEW_PIECES: usize = 8;

/// One bought length and what is cut from it.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Bar {
    /// Its length, m.
    #[serde(rename = "stock_m")]
    pub stock: f64,
    /// The pieces by their index.
    pub pieces: Vec<usize>,
}

/// A way to cut all pieces.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Packing {
    /// The bars, the longest first.
    pub bars: Vec<Bar>,
    /// No way buys less than this, m.
    #[serde(rename = "least_m")]
    pub least: f64,
    /// Whether no way buys less than this one.
    pub is_best: bool,
}

impl Packing {
    /// All that is bought, m.
    pub fn bought(&self) -> f64 {
        self.bars.iter().map(|bar| bar.stock).sum()
    }
}

/// Cuts `pieces`, m, from `stock`, m, of each of which there is enough; none where a piece is longer
/// than the longest. So many pieces as `exact_up_to` are cut in the best way there is, which takes
/// about three times as long for each more; beyond, long pieces go first and what lies in two bars of
/// few pieces is cut anew together.
pub fn pack(pieces: &[f64], stock: &[f64], exact_up_to: usize) -> Option<Packing> {
    let stock = Stock::of(stock);
    if pieces
        .iter()
        .any(|piece| stock.that_holds(*piece).is_none())
    {
        return None;
    }
    let all: Vec<usize> = (0..pieces.len()).collect();
    let (mut bars, is_best) = if pieces.len() <= exact_up_to {
        (best(pieces, &all, &stock), true)
    } else {
        (good(pieces, &stock), false)
    };
    bars.sort_by(|one, other| other.stock.total_cmp(&one.stock));
    let bought: f64 = bars.iter().map(|bar| bar.stock).sum();
    let least = if is_best {
        bought
    } else {
        least(pieces, &stock)
    };
    let is_best = is_best || bought <= least + SAME;
    Some(Packing {
        bars,
        least,
        is_best,
    })
}

/// Stock lengths in order.
struct Stock(Vec<f64>);

impl Stock {
    fn of(lengths: &[f64]) -> Self {
        let mut lengths = lengths.to_vec();
        lengths.sort_by(f64::total_cmp);
        Self(lengths)
    }

    /// The shortest bar that holds so much.
    fn that_holds(&self, length: f64) -> Option<f64> {
        let mut lengths = self.0.iter();
        lengths.find(|bar| length <= **bar + SAME).copied()
    }
}

/// The best way for some of the pieces: over all their subsets, the cheapest bar that holds the first
/// piece left and some others, with the best way for the rest.
fn best(pieces: &[f64], of: &[usize], stock: &Stock) -> Vec<Bar> {
    let count = of.len();
    let subsets = 1_usize << count;
    let mut sums = vec![0.0_f64; subsets];
    for subset in 1..subsets {
        let first = subset.trailing_zeros() as usize;
        sums[subset] = sums[subset & (subset - 1)] + pieces[of[first]];
    }
    let bars: Vec<Option<f64>> = sums.iter().map(|sum| stock.that_holds(*sum)).collect();
    let mut cost = vec![f64::INFINITY; subsets];
    let mut choice = vec![0_usize; subsets];
    cost[0] = 0.0;
    for subset in 1..subsets {
        let first = subset & subset.wrapping_neg();
        let others = subset ^ first;
        let mut with = others;
        loop {
            let taken = with | first;
            if let Some(bar) = bars[taken] {
                let sum = cost[subset ^ taken] + bar + BAR;
                if sum < cost[subset] {
                    (cost[subset], choice[subset]) = (sum, taken);
                }
            }
            if with == 0 {
                break;
            }
            with = (with - 1) & others;
        }
    }
    let mut found = Vec::new();
    let mut left = subsets - 1;
    while left != 0 && choice[left] != 0 {
        let taken = choice[left];
        let held = (0..count).filter(|place| taken >> place & 1 == 1);
        found.push(Bar {
            stock: bars[taken].unwrap_or_default(),
            pieces: held.map(|place| of[place]).collect(),
        });
        left ^= taken;
    }
    found
}

/// A good way: the best of first trying each stock length by itself, then with bars cut anew by twos.
fn good(pieces: &[f64], stock: &Stock) -> Vec<Bar> {
    let mut order: Vec<usize> = (0..pieces.len()).collect();
    order.sort_by(|one, other| pieces[*other].total_cmp(&pieces[*one]));
    let cost = |bars: &[Bar]| bars.iter().map(|bar| bar.stock + BAR).sum::<f64>();
    let starts = stock.0.iter().map(|length| {
        let bars = tightest_first(pieces, &order, *length, stock);
        cut_anew(pieces, bars, stock)
    });
    let best = starts.min_by(|one, other| cost(one).total_cmp(&cost(other)));
    best.unwrap_or_default()
}

/// Each piece, the longest first, into the bar of `length` that it fills best; then each bar shortened
/// to the stock that still holds it.
fn tightest_first(pieces: &[f64], order: &[usize], length: f64, stock: &Stock) -> Vec<Bar> {
    let mut bars: Vec<(f64, Vec<usize>)> = Vec::new();
    for piece in order {
        let size = pieces[*piece];
        let fitting = bars.iter_mut().filter(|(left, _)| size <= *left + SAME);
        let tightest = fitting.min_by(|one, other| one.0.total_cmp(&other.0));
        match tightest {
            Some((left, held)) => {
                *left -= size;
                held.push(*piece);
            }
            None => bars.push((length.max(size) - size, vec![*piece])),
        }
    }
    let bars = bars.into_iter().map(|(_, held)| {
        let sum = held.iter().map(|piece| pieces[*piece]).sum();
        Bar {
            stock: stock.that_holds(sum).unwrap_or(length),
            pieces: held,
        }
    });
    bars.collect()
}

/// Takes bars apart by twos and cuts what was in them in the best way, as long as that buys less.
fn cut_anew(pieces: &[f64], mut bars: Vec<Bar>, stock: &Stock) -> Vec<Bar> {
    let cost = |bars: &[Bar]| bars.iter().map(|bar| bar.stock + BAR).sum::<f64>();
    if bars.len() > ANEW_BARS {
        return bars;
    }
    for _ in 0..ROUNDS {
        let mut is_better = false;
        let mut first = 0;
        while first < bars.len() {
            let mut other = first + 1;
            while other < bars.len() {
                let held = [&bars[first].pieces[..], &bars[other].pieces[..]].concat();
                if held.len() <= ANEW_PIECES {
                    let before = cost(&[bars[first].clone(), bars[other].clone()]);
                    let anew = best(pieces, &held, stock);
                    if cost(&anew) < before - SAME {
                        bars.remove(other);
                        bars.remove(first);
                        bars.extend(anew);
                        is_better = true;
                        continue;
                    }
                }
                other += 1;
            }
            first += 1;
        }
        if !is_better {
            break;
        }
    }
    bars
}

/// No way buys less: all that is needed, and for each piece over half the longest bar a bar of its own.
fn least(pieces: &[f64], stock: &Stock) -> f64 {
    let half = stock.0.last().copied().unwrap_or_default() / 2.0;
    let needed: f64 = pieces.iter().sum();
    let own = pieces.iter().filter(|piece| **piece > half + SAME);
    let own: f64 = own.filter_map(|piece| stock.that_holds(*piece)).sum();
    needed.max(own)
}
