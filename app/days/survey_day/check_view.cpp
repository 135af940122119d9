// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/check_view.h"

#include "app/days/survey_day/set_aside_walk.h"
#include "app/wording/spoken_names.h"
#include "app/wording/tongue.h"

#include <cmath>

namespace days::survey_day {

namespace {

using wording::Words;

/// Offsets below this are lost in the step of the sounder: nothing to offer.
constexpr units::Length leastOffer = units::Length::metres(0.03);

QString plusMinus(double metres, const Words& words) {
    return QStringLiteral("±") + words.fineDepth(units::Depth::metres(metres));
}

CheckView::Offer offerFor(const soundings::SurveyDay& day, const reduction::DayTie& tie,
                          std::size_t i, const Words& words) {
    CheckView::Offer offer;
    offer.day = day.id;
    const QString name = QString::fromStdString(day.name);
    if (day.agreedOffset) {
        offer.isAgreed = true;
        offer.offset = *day.agreedOffset;
        offer.words = wording::Tongue::tr("%1: %2 added, as agreed")
                          .arg(name, words.levelChange(*day.agreedOffset));
        return offer;
    }
    if (i >= tie.offsets.size() || tie.isHeld[i]) {
        offer.words = wording::Tongue::tr("%1: held, the others are tied to it").arg(name);
        return offer;
    }
    if (!tie.isTied[i]) {
        offer.words = wording::Tongue::tr("%1: too few crossings with other days").arg(name);
        return offer;
    }
    offer.offset = tie.offsets[i];
    offer.isOffered = std::fabs(offer.offset.inMetres()) >= leastOffer.inMetres();
    offer.words = offer.isOffered ? wording::Tongue::tr("%1: add %2 (%3), from %4 crossings")
                                        .arg(name, words.levelChange(offer.offset),
                                             plusMinus(2.0 * tie.offsetErrors[i].inMetres(), words),
                                             Words::count(tie.crossingsWithOthers[i]))
                                  : wording::Tongue::tr("%1: agrees with the others").arg(name);
    return offer;
}

/// Nothing where the day's positions keep up with its depths.
std::optional<CheckView::DelayOffer> delayOfferFor(const soundings::SurveyDay& day,
                                                   const reduction::PositionDelay& delay,
                                                   const Words& words) {
    CheckView::DelayOffer offer;
    offer.day = day.id;
    const QString name = QString::fromStdString(day.name);
    const auto late = [](double delay_s) {
        return delay_s < 0.0 ? wording::Tongue::tr("early") : wording::Tongue::tr("late");
    };
    if (day.agreedDelay_s) {
        offer.isAgreed = true;
        offer.delay_s = *day.agreedDelay_s;
        offer.words = wording::Tongue::tr("%1: positions %2 s %3, as agreed")
                          .arg(name, wording::Tongue::number(std::fabs(offer.delay_s), 1),
                               late(offer.delay_s));
        return offer;
    }
    if (!delay.isWorthTaking()) {
        return std::nullopt;
    }
    offer.isOffered = true;
    offer.delay_s = delay.delay_s;
    offer.words =
        wording::Tongue::tr("%1: positions %2 s %3 (±%4 s), from %5 crossings on slopes; without, "
                            "passes would differ by %6 instead of %7")
            .arg(name, wording::Tongue::number(std::fabs(delay.delay_s), 1), late(delay.delay_s),
                 wording::Tongue::number(2.0 * delay.error_s, 1), Words::count(delay.crossings),
                 words.fineDepth(units::Depth::metres(delay.rmsAfter_m)),
                 words.fineDepth(units::Depth::metres(delay.rmsBefore_m)));
    return offer;
}

/// By how much the two days that disagree most do.
QString apartOf(const water::CheckedSurvey& checked, const Words& words) {
    return words.fineDepth(
        units::Depth::metres(std::fabs(checked.differences.front().difference.inMetres())));
}

} // namespace

CheckView checkViewOf(const ViewInput& input) {
    CheckView view;
    const auto& checked = input.derived.checked;
    if (!checked) {
        view.state = wording::Tongue::tr("nothing to look over yet");
        return view;
    }
    std::size_t aside = 0;
    for (const auto& [reason, count] : reasonsFor(input.water.days, checked)) {
        view.setAside.push_back({wording::spoken(reason), Words::count(count)});
        view.reasons.push_back(reason);
        aside += count;
    }
    view.state = wording::Tongue::tr("%1 set aside").arg(Words::count(aside));
    if (checked->check.count > 0) {
        view.state +=
            wording::Tongue::tr(", crossings %1").arg(plusMinus(checked->check.rms_m, input.words));
    }
    if (!checked->differences.empty()) {
        // First what asks for an answer: a line that is too long ends in dots.
        view.state = wording::Tongue::tr("days differ by %1, %2")
                         .arg(apartOf(*checked, input.words), view.state);
    }
    bool anyOffered = false;
    for (std::size_t i = 0; input.water.days.size() > 1 && i < input.water.days.size(); ++i) {
        view.offers.push_back(offerFor(input.water.days[i], checked->tie, i, input.words));
        anyOffered = anyOffered || view.offers.back().isOffered;
    }
    for (std::size_t i = 0; i < std::min(input.water.days.size(), checked->delays.size()); ++i) {
        if (auto offer = delayOfferFor(input.water.days[i], checked->delays[i], input.words)) {
            view.delays.push_back(std::move(*offer));
        }
    }
    if (anyOffered) {
        view.gain =
            wording::Tongue::tr("With all of it, crossings would differ by %1 instead of %2.")
                .arg(input.words.fineDepth(units::Depth::metres(checked->tie.after.rms_m)),
                     input.words.fineDepth(units::Depth::metres(checked->tie.before.rms_m)));
    }
    return view;
}

} // namespace days::survey_day
