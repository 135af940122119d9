// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/zone_words.h"

#include <QStringList>

namespace wording {

using structure::ZoneKind;

namespace {

/// The words of a kind: its one row.
struct KindWords {
    ZoneKind kind;
    const char* one;
    const char* many;
    const char* meaning;
};

constexpr std::array kindWords{
    KindWords{ZoneKind::dropOff, "drop-off", "drop-offs",
              "A steep bank between shallower and deeper water."},
    KindWords{ZoneKind::shelf, "shelf", "shelves", "Gentle bottom with steep ground beside it."},
    KindWords{ZoneKind::plateau, "plateau", "plateaus", "Gentle bottom that stands high."},
    KindWords{ZoneKind::hump, "hump", "humps", "Ground that rises out of what lies round it."},
    KindWords{ZoneKind::hole, "hole", "holes", "Ground that lies below what is round it."},
    KindWords{ZoneKind::trough, "trough", "troughs", "A long hollow."},
    KindWords{ZoneKind::spur, "spur", "spurs", "A ridge that runs out into deeper water."},
    KindWords{ZoneKind::saddle, "saddle", "saddles",
              "The low place of a ridge, with deeper water on both sides."},
    KindWords{ZoneKind::flat, "flat", "flats", "Gentle bottom without anything of its own."},
    KindWords{ZoneKind::weedBed, "weed bed", "weed beds", "Bottom that weed covers."},
    KindWords{ZoneKind::weedEdge, "weed edge", "weed edges",
              "Where weed ends and open bottom begins."}};
static_assert(structure::hasEveryKind(kindWords));

const KindWords& wordsOf(ZoneKind kind) {
    return kindWords[static_cast<std::size_t>(kind)];
}

/// "a, b and c".
QString listed(structure::KindFamily family, const char* KindWords::*word, const QString& last) {
    QStringList words;
    for (const KindWords& kind : kindWords) {
        if (structure::factsOf(kind.kind).family == family) {
            words += QString::fromUtf8(kind.*word);
        }
    }
    const QString end = words.isEmpty() ? QString() : words.takeLast();
    return words.isEmpty() ? end : words.join(QStringLiteral(", ")) + last + end;
}

} // namespace

QString spoken(ZoneKind kind) {
    return QString::fromUtf8(wordsOf(kind).one);
}

QString meaningOf(ZoneKind kind) {
    return QString::fromUtf8(wordsOf(kind).meaning);
}

QString anyOf(structure::KindFamily family) {
    return listed(family, &KindWords::one, QStringLiteral(" or "));
}

QString allOf(structure::KindFamily family) {
    return listed(family, &KindWords::many, QStringLiteral(" and "));
}

} // namespace wording
