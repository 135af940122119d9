// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/zone_words.h"

#include "app/wording/tongue.h"

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
    KindWords{ZoneKind::dropOff, QT_TRANSLATE_NOOP("wording", "drop-off"),
              QT_TRANSLATE_NOOP("wording", "drop-offs"),
              QT_TRANSLATE_NOOP("wording", "A steep bank between shallower and deeper water.")},
    KindWords{ZoneKind::shelf, QT_TRANSLATE_NOOP("wording", "shelf"),
              QT_TRANSLATE_NOOP("wording", "shelves"),
              QT_TRANSLATE_NOOP("wording", "Gentle bottom with steep ground beside it.")},
    KindWords{ZoneKind::plateau, QT_TRANSLATE_NOOP("wording", "plateau"),
              QT_TRANSLATE_NOOP("wording", "plateaus"),
              QT_TRANSLATE_NOOP("wording", "Gentle bottom that stands high.")},
    KindWords{ZoneKind::hump, QT_TRANSLATE_NOOP("wording", "hump"),
              QT_TRANSLATE_NOOP("wording", "humps"),
              QT_TRANSLATE_NOOP("wording", "Ground that rises out of what lies round it.")},
    KindWords{ZoneKind::hole, QT_TRANSLATE_NOOP("wording", "hole"),
              QT_TRANSLATE_NOOP("wording", "holes"),
              QT_TRANSLATE_NOOP("wording", "Ground that lies below what is round it.")},
    KindWords{ZoneKind::trough, QT_TRANSLATE_NOOP("wording", "trough"),
              QT_TRANSLATE_NOOP("wording", "troughs"),
              QT_TRANSLATE_NOOP("wording", "A long hollow.")},
    KindWords{ZoneKind::spur, QT_TRANSLATE_NOOP("wording", "spur"),
              QT_TRANSLATE_NOOP("wording", "spurs"),
              QT_TRANSLATE_NOOP("wording", "A ridge that runs out into deeper water.")},
    KindWords{
        ZoneKind::saddle, QT_TRANSLATE_NOOP("wording", "saddle"),
        QT_TRANSLATE_NOOP("wording", "saddles"),
        QT_TRANSLATE_NOOP("wording", "The low place of a ridge, with deeper water on both sides.")},
    KindWords{ZoneKind::flat, QT_TRANSLATE_NOOP("wording", "flat"),
              QT_TRANSLATE_NOOP("wording", "flats"),
              QT_TRANSLATE_NOOP("wording", "Gentle bottom without anything of its own.")},
    KindWords{ZoneKind::weedBed, QT_TRANSLATE_NOOP("wording", "weed bed"),
              QT_TRANSLATE_NOOP("wording", "weed beds"),
              QT_TRANSLATE_NOOP("wording", "Bottom that weed covers.")},
    KindWords{ZoneKind::weedEdge, QT_TRANSLATE_NOOP("wording", "weed edge"),
              QT_TRANSLATE_NOOP("wording", "weed edges"),
              QT_TRANSLATE_NOOP("wording", "Where weed ends and open bottom begins.")}};
static_assert(structure::hasEveryKind(kindWords));

const KindWords& wordsOf(ZoneKind kind) {
    return kindWords[static_cast<std::size_t>(kind)];
}

/// "a, b and c".
QString listed(structure::KindFamily family, const char* KindWords::*word, const QString& last) {
    QStringList words;
    for (const KindWords& kind : kindWords) {
        if (structure::factsOf(kind.kind).family == family) {
            words += Tongue::tr(kind.*word);
        }
    }
    const QString end = words.isEmpty() ? QString() : words.takeLast();
    return words.isEmpty() ? end : words.join(QStringLiteral(", ")) + last + end;
}

} // namespace

QString spoken(ZoneKind kind) {
    return Tongue::tr(wordsOf(kind).one);
}

QString meaningOf(ZoneKind kind) {
    return Tongue::tr(wordsOf(kind).meaning);
}

QString anyOf(structure::KindFamily family) {
    return listed(family, &KindWords::one, Tongue::tr(" or "));
}

QString allOf(structure::KindFamily family) {
    return listed(family, &KindWords::many, Tongue::tr(" and "));
}

} // namespace wording
