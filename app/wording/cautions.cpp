// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/cautions.h"

#include "app/wording/by_kind.h"
#include "core/anchoring/cautions.h"
#include "core/base/number_text.h"
#include "core/water/steps/day_cautions.h"

namespace wording {

namespace {

QString fixed(double value, int decimals) {
    return QString::fromStdString(base::fixedText(value, decimals));
}

/// What a scope is held against.
QString teaching() {
    return QStringLiteral("courses teach %1 to 10, and more is safer.")
        .arg(fixed(anchoring::seamanlikeScope, 0));
}

QString named(anchoring::LiePart part) {
    switch (part) {
    case anchoring::LiePart::boat:
        return QStringLiteral("The boat");
    case anchoring::LiePart::bowAnchor:
        return QStringLiteral("The bow anchor or its rope");
    case anchoring::LiePart::sternAnchor:
        return QStringLiteral("The stern anchor or its rope");
    case anchoring::LiePart::swing:
        return QStringLiteral("The circle that she swings in");
    }
    return {};
}

QString ropeNamed(anchoring::LiePart part) {
    return part == anchoring::LiePart::sternAnchor ? QStringLiteral("stern")
                                                   : QStringLiteral("bow");
}

QString said(const anchoring::LiesInClosedWater& c) {
    return c.part == anchoring::LiePart::swing
               ? QStringLiteral("Laid by hand: closed water reaches into the circle that she "
                                "swings in.")
               : QStringLiteral("Laid by hand: %1 comes into closed water.")
                     .arg(named(c.part).toLower());
}

QString said(const anchoring::LiesAshore& c) {
    return c.part == anchoring::LiePart::swing
               ? QStringLiteral("Laid by hand: the shore, or water too shallow for her, reaches "
                                "into the circle that she swings in.")
               : QStringLiteral("Laid by hand: %1 comes ashore, or where she does not float.")
                     .arg(named(c.part).toLower());
}

QString said(const anchoring::RopeTooShort& c, const Words& words) {
    return QStringLiteral(
               "Laid by hand: the %1 rope is too short: %2 to lie there and fall back on, %3 on "
               "board.")
        .arg(ropeNamed(c.part), words.length(c.needed), words.length(c.onBoard));
}

QString said(const anchoring::TooSteep& c) {
    return QStringLiteral("Laid by hand: the %1 anchor is too near to hold, scope %2 and not %3.")
        .arg(ropeNamed(c.part), fixed(c.scope, 1), fixed(c.least, 1));
}

QString said(const anchoring::LaidOffTheWind& c) {
    return c.isTooFar ? QStringLiteral("Laid by hand: %1° off the wind, which comes over her side "
                                       "and can fill her. Lay the anchors anew.")
                            .arg(fixed(c.turn_deg, 0))
                      : QStringLiteral("Laid by hand: the bow points %1° off the wind.")
                            .arg(fixed(c.turn_deg, 0));
}

QString said(const rods::BaitCaution& c) {
    const auto of = [&](const char* what) {
        return QStringLiteral("Rod %1, laid by hand: ").arg(c.rod) + QString::fromLatin1(what);
    };
    switch (c.rule) {
    case rods::BaitRule::inClosedWater:
        return of("bait or line lies in closed water.");
    case rods::BaitRule::onLand:
        return of("bait or line lies over land.");
    case rods::BaitRule::belowLimit:
        return of("deeper than the limit.");
    case rods::BaitRule::tooShallow:
        return of("hardly any water for a bait.");
    case rods::BaitRule::tooFar:
        return of("farther than the cast.");
    case rods::BaitRule::tooNear:
        return of("too near to the boat and her ropes.");
    case rods::BaitRule::foulOfRope:
        return of("its line leads along an anchor rope.");
    case rods::BaitRule::nearAnotherLine:
        return QStringLiteral("Rods %1 and %2, laid by hand: too near to each other.")
            .arg(c.rod)
            .arg(c.other);
    }
    return {};
}

QString said(const marks::RoomForRods& room) {
    return room.rods == 0
               ? QStringLiteral("No room for a rod within the cast.")
               : QStringLiteral("Room for %1 of %2 rods.").arg(room.rods).arg(room.wanted);
}

QString said(const marks::WindTurnsHere& turn) {
    return QStringLiteral("The wind turns or gets up at %1, while you lie here; anchors are laid "
                          "for the wind %2 it. Lay them anew, or move on, when it does.")
        .arg(Words::timeOfDay(turn.at),
             turn.isLaidForLater ? QStringLiteral("after") : QStringLiteral("before"));
}

QString said(const marks::SteepAtAnchor& steep) {
    const QString sentence = QStringLiteral("The %1 anchor lands on a slope of %2%3")
                                 .arg(steep.end == marks::AnchorEnd::bow ? QStringLiteral("bow")
                                                                         : QStringLiteral("stern"),
                                      Words::slope(100.0 * steep.slope));
    return steep.isToBoat
               ? sentence.arg(QStringLiteral(" that falls towards the boat, so that the pull lifts "
                                             "it: pay out more rope, and watch whether it drags."))
               : sentence.arg(QStringLiteral(": watch whether it slides."));
}

QString said(const marks::FoulAtAnchor& foul) {
    const QString end =
        foul.end == marks::AnchorEnd::bow ? QStringLiteral("bow") : QStringLiteral("stern");
    return foul.bottom == soundings::Bottom::rock
               ? QStringLiteral("Rock was felt near the %1 anchor: it may slip, or jam. Have a "
                                "line on its crown, or be ready to leave it.")
                     .arg(end)
               : QStringLiteral("The lead brought up weed near the %1 anchor: it may slide on it. "
                                "Watch whether it drags.")
                     .arg(end);
}

QString lifejacket() {
    return QStringLiteral("Wear the lifejacket, do not stow it. If you fall in, float on your back "
                          "until your breathing settles.");
}

/// One sentence of what the water does to somebody who falls in: the lifejacket is named once a
/// list.
QString said(const water::FallingIn& falling, const Words& words) {
    const QString first = falling.cold ? said(*falling.cold, words) : lifejacket();
    return falling.mayHaveIce
               ? first +
                     QStringLiteral(" Where there is ice, stay ashore: never break out through it.")
               : first;
}

/// Of one or two sentences about the dark, one.
QString said(const marks::DarkHours& dark) {
    using Home = marks::DarkHours::Home;
    QStringList sentences;
    if (dark.startsInTheDark) {
        sentences += QStringLiteral("You start before it is light: carry a white light.");
    }
    if (dark.home == Home::inTheDark) {
        sentences += QStringLiteral("You come home in the dark: carry a white light.");
    } else if (dark.home == Home::afterSunset) {
        sentences += QStringLiteral("You come home after sunset.");
    }
    return sentences.join(' ');
}

QString said(const water::Ropes& ropes) {
    QString engine = QStringLiteral("Engine in neutral before you fall back: a rope in the "
                                    "propeller holds the boat by the stern.");
    if (!ropes.shortScope) {
        return engine;
    }
    return engine + QStringLiteral(" Rope at %1 times depth and bow height is for settled weather "
                                   "only: %2")
                        .arg(fixed(*ropes.shortScope, 1), teaching());
}

} // namespace

QString said(const anchoring::Caution& caution, const Words& words) {
    return std::visit(
        ByKind{[](anchoring::HighWaves) {
                   return QStringLiteral("High waves for an open boat at anchor: look for a lee.");
               },
               [](const anchoring::ShortForTheWind& c) {
                   return QStringLiteral("Scope %1 is short for this wind: %2")
                       .arg(fixed(c.scope, 1), teaching());
               },
               [](const anchoring::ShortOfRoom& c) {
                   return QStringLiteral("Room or rope for scope %1 only: take a bearing ashore "
                                         "and watch whether she drags.")
                       .arg(fixed(c.scope, 1));
               },
               [](const anchoring::TurnedOffTheWind& c) {
                   return QStringLiteral(
                              "Turned %1° off the wind so that neither anchor lands ashore.")
                       .arg(fixed(c.turn_deg, 0));
               },
               [](anchoring::BowToOpenWater) {
                   return QStringLiteral(
                       "Where the wind will come from is not known: anchors are drawn with the bow "
                       "to the longest open water. Lay her to the wind that blows.");
               },
               [](const anchoring::LiesInClosedWater& c) { return said(c); },
               [](const anchoring::LiesAshore& c) { return said(c); },
               [&](const anchoring::RopeTooShort& c) { return said(c, words); },
               [](const anchoring::TooSteep& c) { return said(c); },
               [](const anchoring::LaidOffTheWind& c) { return said(c); },
               [](const anchoring::WindChangedSince& c) {
                   return QStringLiteral("Laid by hand for a wind %1° from this one: see whether "
                                         "the anchors still fit it.")
                       .arg(fixed(c.change_deg, 0));
               },
               [&](const anchoring::LiesOffTheMark& c) {
                   return QStringLiteral("Laid by hand: in this wind the boat lies %1 from where "
                                         "you put her.")
                       .arg(words.length(c.off));
               }},
        caution);
}

QString said(const marks::Caution& caution, const Words& words) {
    return std::visit(
        ByKind{
            [](marks::InClosedWater) { return QStringLiteral("Your mark lies in closed water."); },
            [](const marks::InBannedWater& c) {
                return c.name.empty()
                           ? QStringLiteral("Your mark lies in water that you banned.")
                           : QStringLiteral("Your mark lies in water that you banned: %1.")
                                 .arg(QString::fromStdString(c.name));
            },
            [](marks::DeeperThanLimit) {
                return QStringLiteral("Your mark is deeper than the limit.");
            },
            [](marks::ClosedWaterNear) {
                return QStringLiteral("Closed water lies within a cast.");
            },
            [](marks::GuessedHere) {
                return QStringLiteral("The depth here is a guess: sound it before you anchor.");
            },
            [](marks::GuessedAround) {
                return QStringLiteral(
                    "Most depths within a cast are guesses: sound round the boat first.");
            },
            [&](const marks::WavesHere& c) {
                return QStringLiteral("Waves of about %1 here.").arg(words.lengthTo(c.height, 1));
            },
            [](const marks::RoomForRods& c) { return said(c); },
            [](const marks::WindTurnsHere& c) { return said(c); },
            [](const marks::SteepAtAnchor& c) { return said(c); },
            [](const marks::FoulAtAnchor& c) { return said(c); }},
        caution);
}

QString said(const water::ColdWater& cold, const Words& words) {
    const QString limit = words.wholeTemperature(water::coldWater);
    return QStringLiteral("%1: the shock of falling in can kill within a minute. %2")
        .arg(cold.isMeasured ? QStringLiteral("The water is cold (below %1)").arg(limit)
                             : QStringLiteral("Water below %1 is cold").arg(limit),
             lifejacket());
}

QString said(const water::DayCaution& caution, const Words& words) {
    return std::visit(
        ByKind{[](const water::StayAshore& c) {
                   return QStringLiteral(
                              "Force %1 is no weather for a small open boat: stay ashore.")
                       .arg(c.force);
               },
               [](const water::WhiteHorses& c) {
                   return QStringLiteral("Force %1: white horses. Keep to sheltered water, pay out "
                                         "more rope, and go in if it freshens.")
                       .arg(c.force);
               },
               [](water::WindNotSaid) {
                   return QStringLiteral(
                       "How strong the wind will be is not known: look at the forecast "
                       "before you go out.");
               },
               [&](const water::FallingIn& c) { return said(c, words); },
               [](water::Thunder) {
                   return QStringLiteral("At the first thunder go ashore: a boat is the highest "
                                         "thing on the water.");
               },
               [](const marks::DarkHours& c) { return said(c); },
               [](water::WindOnTheBeam) {
                   return QStringLiteral(
                       "Wind on the beam of a boat held at both ends can fill her: when it goes "
                       "round, slip the stern rope and let her swing to the bow. Make both ropes "
                       "fast so that they slip at once, a knife within reach; never lie to the "
                       "stern anchor alone.");
               },
               [](water::SwingsToOneAnchor) {
                   return QStringLiteral(
                       "To one anchor she swings with the wind: keep her circle clear of other "
                       "boats, reel in when she goes round, and anchor by the bow, never by the "
                       "stern.");
               },
               [](const water::Ropes& c) { return said(c); },
               [](water::TellSomebody) {
                   return QStringLiteral(
                       "Tell somebody ashore where you are and when you will be back.");
               }},
        caution);
}

QString said(const water::DayRule& rule) {
    return std::visit(
        ByKind{[](water::OutsideSeason) {
                   return QStringLiteral("That day lies outside the season.");
               },
               [](const water::RodLimit& r) {
                   return QStringLiteral("At most %1 rods in a boat.").arg(r.rods);
               },
               [](const water::ClosedPart& r) {
                   return QStringLiteral("Closed water: %1.").arg(QString::fromStdString(r.name));
               },
               [](const water::HouseNote& r) { return QString::fromStdString(r.text); },
               [](water::LocalRulesFirst) {
                   return QStringLiteral("Local rules and the fishery's staff go first.");
               }},
        rule);
}

QString said(water::FishCare care, const Words& words) {
    switch (care) {
    case water::FishCare::warmWater:
        return QStringLiteral("Above %1 pike often die after capture in water this warm: consider "
                              "not fishing for them, or for any species that dies of it.")
            .arg(words.wholeTemperature(water::warmForFish));
    case water::FishCare::handling:
        return QStringLiteral("Fish: wet hands, a wet mat, unhooked in the water where it can be "
                              "done, and a short time in the air.");
    }
    return {};
}

QStringList cautionsOf(const marks::Mark& mark, const Words& words) {
    QStringList lines;
    for (const marks::Caution& caution : mark.cautions) {
        lines += said(caution, words);
    }
    for (const anchoring::Caution& caution : mark.anchors.cautions) {
        lines += said(caution, words);
    }
    for (const rods::BaitCaution& caution : mark.spread.cautions) {
        lines += said(caution);
    }
    if (mark.spread.laidTooMany > 0) {
        lines += QStringLiteral("%1 of the baits laid by hand have no rod and are left out.")
                     .arg(mark.spread.laidTooMany);
    }
    lines.removeDuplicates();
    return lines;
}

} // namespace wording
