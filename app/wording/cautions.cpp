// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/cautions.h"

#include "app/wording/by_kind.h"
#include "app/wording/tongue.h"
#include "core/anchoring/cautions.h"
#include "core/base/number_text.h"
#include "core/water/steps/day_cautions.h"

namespace wording {

namespace {

QString fixed(double value, int decimals) {
    return Tongue::number(value, decimals);
}

/// What a scope is held against.
QString teaching() {
    return Tongue::tr("courses teach %1 to 10, and more is safer.")
        .arg(fixed(anchoring::seamanlikeScope, 0));
}

QString named(anchoring::LiePart part) {
    switch (part) {
    case anchoring::LiePart::boat:
        return Tongue::tr("the boat");
    case anchoring::LiePart::bowAnchor:
        return Tongue::tr("the bow anchor or its rope");
    case anchoring::LiePart::sternAnchor:
        return Tongue::tr("the stern anchor or its rope");
    case anchoring::LiePart::swing:
        return Tongue::tr("the circle that she swings in");
    }
    return {};
}

QString ropeNamed(anchoring::LiePart part) {
    return part == anchoring::LiePart::sternAnchor ? Tongue::tr("stern") : Tongue::tr("bow");
}

QString said(const anchoring::LiesInClosedWater& c) {
    return c.part == anchoring::LiePart::swing
               ? Tongue::tr("Laid by hand: closed water reaches into the circle that she "
                            "swings in.")
               : Tongue::tr("Laid by hand: %1 comes into closed water.").arg(named(c.part));
}

QString said(const anchoring::LiesAshore& c) {
    return c.part == anchoring::LiePart::swing
               ? Tongue::tr("Laid by hand: the shore, or water too shallow for her, reaches "
                            "into the circle that she swings in.")
               : Tongue::tr("Laid by hand: %1 comes ashore, or where she does not float.")
                     .arg(named(c.part));
}

QString said(const anchoring::RopeTooShort& c, const Words& words) {
    return Tongue::tr(
               "Laid by hand: the %1 rope is too short: %2 to lie there and fall back on, %3 on "
               "board.")
        .arg(ropeNamed(c.part), words.length(c.needed), words.length(c.onBoard));
}

QString said(const anchoring::TooSteep& c) {
    return Tongue::tr("Laid by hand: the %1 anchor is too near to hold, scope %2 and not %3.")
        .arg(ropeNamed(c.part), fixed(c.scope, 1), fixed(c.least, 1));
}

QString said(const anchoring::LaidOffTheWind& c) {
    return c.isTooFar ? Tongue::tr("Laid by hand: %1° off the wind, which comes over her side "
                                   "and can fill her. Lay the anchors anew.")
                            .arg(fixed(c.turn_deg, 0))
                      : Tongue::tr("Laid by hand: the bow points %1° off the wind.")
                            .arg(fixed(c.turn_deg, 0));
}

QString said(const rods::BaitCaution& c) {
    const auto of = [&](const QString& what) {
        return Tongue::tr("Rod %1, laid by hand: %2").arg(c.rod).arg(what);
    };
    switch (c.rule) {
    case rods::BaitRule::inClosedWater:
        return of(Tongue::tr("bait or line lies in closed water."));
    case rods::BaitRule::onLand:
        return of(Tongue::tr("bait or line lies over land."));
    case rods::BaitRule::belowLimit:
        return of(Tongue::tr("deeper than the limit."));
    case rods::BaitRule::tooShallow:
        return of(Tongue::tr("hardly any water for a bait."));
    case rods::BaitRule::tooFar:
        return of(Tongue::tr("farther than the cast."));
    case rods::BaitRule::tooNear:
        return of(Tongue::tr("too near to the boat and her ropes."));
    case rods::BaitRule::foulOfRope:
        return of(Tongue::tr("its line leads along an anchor rope."));
    case rods::BaitRule::nearAnotherLine:
        return Tongue::tr("Rods %1 and %2, laid by hand: too near to each other.")
            .arg(c.rod)
            .arg(c.other);
    }
    return {};
}

QString said(const marks::RoomForRods& room) {
    return room.rods == 0 ? Tongue::tr("No room for a rod within the cast.")
                          : Tongue::tr("Room for %1 of %2 rods.").arg(room.rods).arg(room.wanted);
}

QString said(const marks::WindTurnsHere& turn) {
    return Tongue::tr("The wind turns or gets up at %1, while you lie here; anchors are laid "
                      "for the wind %2 it. Lay them anew, or move on, when it does.")
        .arg(Words::timeOfDay(turn.at),
             turn.isLaidForLater ? Tongue::tr("after") : Tongue::tr("before"));
}

QString said(const marks::SteepAtAnchor& steep) {
    const QString sentence =
        Tongue::tr("The %1 anchor lands on a slope of %2%3")
            .arg(steep.end == marks::AnchorEnd::bow ? Tongue::tr("bow") : Tongue::tr("stern"),
                 Words::slope(100.0 * steep.slope));
    return steep.isToBoat
               ? sentence.arg(Tongue::tr(" that falls towards the boat, so that the pull lifts "
                                         "it: pay out more rope, and watch whether it drags."))
               : sentence.arg(Tongue::tr(": watch whether it slides."));
}

QString said(const marks::FoulAtAnchor& foul) {
    const QString end = foul.end == marks::AnchorEnd::bow ? Tongue::tr("bow") : Tongue::tr("stern");
    return foul.bottom == soundings::Bottom::rock
               ? Tongue::tr("Rock was felt near the %1 anchor: it may slip, or jam. Have a "
                            "line on its crown, or be ready to leave it.")
                     .arg(end)
               : Tongue::tr("The lead brought up weed near the %1 anchor: it may slide on it. "
                            "Watch whether it drags.")
                     .arg(end);
}

QString lifejacket() {
    return Tongue::tr("Wear the lifejacket, do not stow it. If you fall in, float on your back "
                      "until your breathing settles.");
}

/// One sentence of what the water does to somebody who falls in: the lifejacket is named once a
/// list.
QString said(const water::FallingIn& falling, const Words& words) {
    const QString first = falling.cold ? said(*falling.cold, words) : lifejacket();
    return falling.mayHaveIce
               ? first + Tongue::tr(" Where there is ice, stay ashore: never break out through it.")
               : first;
}

/// Of one or two sentences about the dark, one.
QString said(const marks::DarkHours& dark) {
    using Home = marks::DarkHours::Home;
    QStringList sentences;
    if (dark.startsInTheDark) {
        sentences += Tongue::tr("You start before it is light: carry a white light.");
    }
    if (dark.home == Home::inTheDark) {
        sentences += Tongue::tr("You come home in the dark: carry a white light.");
    } else if (dark.home == Home::afterSunset) {
        sentences += Tongue::tr("You come home after sunset.");
    }
    return sentences.join(' ');
}

QString said(const water::Ropes& ropes) {
    QString engine = Tongue::tr("Engine in neutral before you fall back: a rope in the "
                                "propeller holds the boat by the stern.");
    if (!ropes.shortScope) {
        return engine;
    }
    return engine + Tongue::tr(" Rope at %1 times depth and bow height is for settled weather "
                               "only: %2")
                        .arg(fixed(*ropes.shortScope, 1), teaching());
}

} // namespace

QString said(const anchoring::Caution& caution, const Words& words) {
    return std::visit(
        ByKind{[](anchoring::HighWaves) {
                   return Tongue::tr("High waves for an open boat at anchor: look for a lee.");
               },
               [](const anchoring::ShortForTheWind& c) {
                   return Tongue::tr("Scope %1 is short for this wind: %2")
                       .arg(fixed(c.scope, 1), teaching());
               },
               [](const anchoring::ShortOfRoom& c) {
                   return Tongue::tr("Room or rope for scope %1 only: take a bearing ashore "
                                     "and watch whether she drags.")
                       .arg(fixed(c.scope, 1));
               },
               [](const anchoring::TurnedOffTheWind& c) {
                   return Tongue::tr("Turned %1° off the wind so that neither anchor lands ashore.")
                       .arg(fixed(c.turn_deg, 0));
               },
               [](anchoring::BowToOpenWater) {
                   return Tongue::tr(
                       "Where the wind will come from is not known: anchors are drawn with the bow "
                       "to the longest open water. Lay her to the wind that blows.");
               },
               [](const anchoring::LiesInClosedWater& c) { return said(c); },
               [](const anchoring::LiesAshore& c) { return said(c); },
               [&](const anchoring::RopeTooShort& c) { return said(c, words); },
               [](const anchoring::TooSteep& c) { return said(c); },
               [](const anchoring::LaidOffTheWind& c) { return said(c); },
               [](const anchoring::WindChangedSince& c) {
                   return Tongue::tr("Laid by hand for a wind %1° from this one: see whether "
                                     "the anchors still fit it.")
                       .arg(fixed(c.change_deg, 0));
               },
               [&](const anchoring::LiesOffTheMark& c) {
                   return Tongue::tr("Laid by hand: in this wind the boat lies %1 from where "
                                     "you put her.")
                       .arg(words.length(c.off));
               }},
        caution);
}

QString said(const marks::Caution& caution, const Words& words) {
    return std::visit(
        ByKind{
            [](marks::InClosedWater) { return Tongue::tr("Your mark lies in closed water."); },
            [](const marks::InBannedWater& c) {
                return c.name.empty() ? Tongue::tr("Your mark lies in water that you banned.")
                                      : Tongue::tr("Your mark lies in water that you banned: %1.")
                                            .arg(QString::fromStdString(c.name));
            },
            [](marks::DeeperThanLimit) {
                return Tongue::tr("Your mark is deeper than the limit.");
            },
            [](marks::ClosedWaterNear) { return Tongue::tr("Closed water lies within a cast."); },
            [](marks::GuessedHere) {
                return Tongue::tr("The depth here is a guess: sound it before you anchor.");
            },
            [](marks::GuessedAround) {
                return Tongue::tr(
                    "Most depths within a cast are guesses: sound round the boat first.");
            },
            [&](const marks::WavesHere& c) {
                return Tongue::tr("Waves of about %1 here.").arg(words.lengthTo(c.height, 1));
            },
            [](const marks::RoomForRods& c) { return said(c); },
            [](const marks::WindTurnsHere& c) { return said(c); },
            [](const marks::SteepAtAnchor& c) { return said(c); },
            [](const marks::FoulAtAnchor& c) { return said(c); }},
        caution);
}

QString said(const water::ColdWater& cold, const Words& words) {
    const QString limit = words.wholeTemperature(water::coldWater);
    return Tongue::tr("%1: the shock of falling in can kill within a minute. %2")
        .arg(cold.isMeasured ? Tongue::tr("The water is cold (below %1)").arg(limit)
                             : Tongue::tr("Water below %1 is cold").arg(limit),
             lifejacket());
}

QString said(const water::DayCaution& caution, const Words& words) {
    return std::visit(
        ByKind{
            [](const water::StayAshore& c) {
                return Tongue::tr("Force %1 is no weather for a small open boat: stay ashore.")
                    .arg(c.force);
            },
            [](const water::WhiteHorses& c) {
                return Tongue::tr("Force %1: white horses. Keep to sheltered water, pay out "
                                  "more rope, and go in if it freshens.")
                    .arg(c.force);
            },
            [](water::WindNotSaid) {
                return Tongue::tr("How strong the wind will be is not known: look at the forecast "
                                  "before you go out.");
            },
            [&](const water::FallingIn& c) { return said(c, words); },
            [](water::Thunder) {
                return Tongue::tr("At the first thunder go ashore: a boat is the highest "
                                  "thing on the water.");
            },
            [](const marks::DarkHours& c) { return said(c); },
            [](water::WindOnTheBeam) {
                return Tongue::tr(
                    "Wind on the beam of a boat held at both ends can fill her: when it goes "
                    "round, slip the stern rope and let her swing to the bow. Make both ropes "
                    "fast so that they slip at once, a knife within reach; never lie to the "
                    "stern anchor alone.");
            },
            [](water::SwingsToOneAnchor) {
                return Tongue::tr(
                    "To one anchor she swings with the wind: keep her circle clear of other "
                    "boats, reel in when she goes round, and anchor by the bow, never by the "
                    "stern.");
            },
            [](const water::Ropes& c) { return said(c); },
            [](water::TellSomebody) {
                return Tongue::tr("Tell somebody ashore where you are and when you will be back.");
            }},
        caution);
}

QString said(const water::DayRule& rule) {
    return std::visit(
        ByKind{[](water::OutsideSeason) { return Tongue::tr("That day lies outside the season."); },
               [](const water::RodLimit& r) {
                   return Tongue::tr("At most %1 rods in a boat.").arg(r.rods);
               },
               [](const water::ClosedPart& r) {
                   return Tongue::tr("Closed water: %1.").arg(QString::fromStdString(r.name));
               },
               [](const water::HouseNote& r) { return QString::fromStdString(r.text); },
               [](water::LocalRulesFirst) {
                   return Tongue::tr("Local rules and the fishery's staff go first.");
               }},
        rule);
}

QString said(water::FishCare care, const Words& words) {
    switch (care) {
    case water::FishCare::warmWater:
        return Tongue::tr("Above %1 pike often die after capture in water this warm: consider "
                          "not fishing for them, or for any species that dies of it.")
            .arg(words.wholeTemperature(water::warmForFish));
    case water::FishCare::handling:
        return Tongue::tr("Fish: wet hands, a wet mat, unhooked in the water where it can be "
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
        lines += Tongue::tr("%1 of the baits laid by hand have no rod and are left out.")
                     .arg(mark.spread.laidTooMany);
    }
    lines.removeDuplicates();
    return lines;
}

} // namespace wording
