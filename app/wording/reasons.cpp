// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/reasons.h"

#include "app/wording/by_kind.h"
#include "app/wording/cautions.h"
#include "app/wording/lie_words.h"
#include "app/wording/tongue.h"
#include "app/wording/zone_words.h"
#include "core/base/number_text.h"

#include <QStringList>

namespace wording {

namespace {

using Way = marks::WindOnSlope::Way;

QString wholePercent(double share) {
    return Tongue::number(100.0 * share, 0) + QStringLiteral(" %");
}

QString rate(double per10RodHours) {
    return Tongue::number(per10RodHours, 1);
}

QString said(const marks::FishableWater& water, const Words& words) {
    if (water.share <= 0.0) {
        return Tongue::tr("nothing within a cast is open and no deeper than %1")
            .arg(words.depth(water.limit));
    }
    return Tongue::tr("%1 of the water within a cast can be fished, %2 to %3 deep")
        .arg(wholePercent(water.share), words.depthNumber(water.shallowest),
             words.depth(water.deepest));
}

QString said(const marks::DropOffNear& dropOff, const Words& words) {
    if (dropOff.edge <= units::Length()) {
        return Tongue::tr("no drop-off within a cast");
    }
    return Tongue::tr("%1 of drop-off, %2 to %3, within a cast")
        .arg(words.lengthTo(dropOff.edge, 0), words.depthNumber(dropOff.top),
             words.depth(dropOff.foot));
}

QString said(const marks::WeedEdgeNear& weed, const Words& words) {
    return weed.edge > units::Length()
               ? Tongue::tr("%1 of weed edge within a cast").arg(words.lengthTo(weed.edge, 0))
               : Tongue::tr("no weed edge within a cast");
}

QString said(const marks::FeaturesNear& features, const Words& words) {
    if (!features.mostOf) {
        return Tongue::tr("no %1 within a cast").arg(anyOf(structure::KindFamily::feature));
    }
    return Tongue::tr("%1 of %2 within a cast, most of it %3")
        .arg(words.smallArea(features.area), anyOf(structure::KindFamily::feature),
             spoken(*features.mostOf));
}

QString said(const marks::WindOnSlope& wind, const Words& words) {
    if (wind.way == Way::neither) {
        return Tongue::tr("the wind blows neither up the slope nor down it");
    }
    return (wind.way == Way::up ? Tongue::tr("the wind of %1 blows up a slope of %2")
                                : Tongue::tr("the wind of %1 blows down a slope of %2"))
        .arg(words.speedTo(wind.wind, 1), wholePercent(wind.slope));
}

QString said(const marks::WaveState& waves, const Words& words) {
    return Tongue::tr("waves of %1 after %2 of open water")
        .arg(words.lengthTo(waves.height, 2), words.lengthTo(waves.fetch, 0));
}

QString said(const marks::DepthsKnownTo& known, const Words& words) {
    return known.halfWidth ? Tongue::tr("depths within a cast known to ±%1")
                                 .arg(words.lengthTo(*known.halfWidth, 1))
                           : Tongue::tr("how far the depths may be off is not known");
}

QString said(const marks::CatchHere& here) {
    return Tongue::tr("%1 fish in 10 rod-hours to be expected here, %2 over the whole water")
        .arg(rate(here.per10RodHours), rate(here.meanPer10RodHours));
}

QString said(const marks::RateBetween& between) {
    return Tongue::tr("the rate here may lie between %1 and %2 in 10 rod-hours")
        .arg(rate(between.lowPer10RodHours), rate(between.highPer10RodHours));
}

QString said(const marks::UnderTheBoat& under) {
    return Tongue::tr("%1 under the boat")
        .arg(under.kind ? spoken(*under.kind) : Tongue::tr("open water"));
}

} // namespace

QString said(const marks::Reason& reason, const Words& words) {
    return std::visit(
        ByKind{[](std::monostate) { return QString(); },
               [&](const marks::FishableWater& r) { return said(r, words); },
               [&](const marks::DropOffNear& r) { return said(r, words); },
               [&](const marks::WeedEdgeNear& r) { return said(r, words); },
               [&](const marks::FeaturesNear& r) { return said(r, words); },
               [&](const marks::WindOnSlope& r) { return said(r, words); },
               [](marks::NoWind) { return Tongue::tr("no wind"); },
               [](marks::WindNotKnown) {
                   return Tongue::tr("how the wind blows on to it is not known and not counted");
               },
               [](marks::WavesNotKnown) {
                   return Tongue::tr("the wind is not said: waves and shelter are not counted");
               },
               [&](const marks::WaveState& r) { return said(r, words); },
               [&](const marks::InTwoWinds& r) {
                   const auto one = [&](const marks::WindReason& wind) {
                       return std::visit(
                           [&](const auto& of) { return said(marks::Reason(of), words); }, wind);
                   };
                   return Tongue::tr("%1; from %2 %3")
                       .arg(one(r.before), Words::timeOfDay(r.turn), one(r.after));
               },
               [](const marks::CatchHere& r) { return said(r); },
               [](marks::LogIsSilent) { return Tongue::tr("the log does not tell yet"); },
               [](const marks::RateBetween& r) { return said(r); },
               [](marks::NeverTried) { return Tongue::tr("never tried"); },
               [&](const marks::DepthsKnownTo& r) { return said(r, words); },
               [](const marks::UnderTheBoat& r) { return said(r); },
               [](marks::HoursPlanned) { return Tongue::tr("at the hours planned"); },
               [](marks::BestOfMany) {
                   return Tongue::tr("what looks best of many looks better than it is");
               }},
        reason);
}

marks::ToldMarks told(std::span<const marks::Mark> marks) {
    return {marks,
            [](const std::vector<marks::Factor>& factors) {
                QStringList reasons;
                for (const marks::Factor& factor : factors) {
                    reasons += said(factor.because, Words());
                }
                reasons.removeAll(QString());
                return reasons.join(QStringLiteral("; ")).toStdString();
            },
            [](const marks::Mark& mark, const marks::DayStop* stop) {
                const Words words;
                QStringList lines;
                for (const QString& caution : cautionsOf(mark, words)) {
                    lines += Tongue::tr("Caution: %1").arg(caution);
                }
                if (stop != nullptr) {
                    lines += Tongue::tr("Laid for wind %1").arg(words.wind(stop->wind));
                }
                return (lines + lieLines(mark, words)).join('\n').toStdString();
            }};
}

} // namespace wording
