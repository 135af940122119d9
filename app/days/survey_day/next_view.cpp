// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/next_view.h"

#include "app/wording/counted_words.h"
#include "app/wording/tongue.h"

#include <algorithm>
#include <chrono>

namespace days::survey_day {

using wording::Words;

namespace {

QString minutes(std::chrono::seconds duration) {
    return QString::number(
        std::max<std::int64_t>(1, std::chrono::round<std::chrono::minutes>(duration).count()));
}

QString endsOf(const surface::SurveyLine& line, const geo::WaterFrame& frame) {
    return wording::Tongue::tr("From %1 to %2.")
        .arg(Words::place(frame.toEarth(line.start)), Words::place(frame.toEarth(line.end)));
}

} // namespace

NextView nextViewOf(const surface::SurveyTrip* trip, const std::optional<geo::WaterFrame>& frame,
                    const Words& words, int chosen) {
    NextView view;
    if (trip == nullptr) {
        view.state = wording::Tongue::tr("not asked yet");
        return view;
    }
    const QString time =
        Words::hours(std::chrono::duration<double, std::ratio<3600>>(trip->duration).count());
    const std::size_t count = trip->lines.size();
    view.state =
        QStringLiteral("%1, %2").arg(wording::linesCounted(static_cast<qint64>(count)), time);
    view.trip =
        wording::Tongue::tr("%1 and %2 of sailing, from the launch and back, bring the trust "
                            "from %3 to %4 on average where you fish.")
            .arg(time, words.length(trip->distance),
                 QStringLiteral("±") +
                     words.fineDepth(units::Depth::fromLength(trip->meanHalfWidthBefore)),
                 QStringLiteral("±") +
                     words.fineDepth(units::Depth::fromLength(trip->meanHalfWidthAfter)));
    double whole = 0.0;
    for (const surface::SurveyLine& line : trip->lines) {
        whole += line.gain_m3;
    }
    for (std::size_t i = 0; i < count; ++i) {
        const surface::SurveyLine& line = trip->lines[i];
        view.rows.push_back({wording::Tongue::tr("line %1").arg(i + 1), words.length(line.length),
                             Words::bearing(geo::bearing(line.start, line.end)),
                             minutes(line.duration),
                             whole > 0.0 ? Words::share(line.gain_m3 / whole) : QString()});
    }
    const auto position = static_cast<std::size_t>(chosen);
    if (frame && chosen >= 0 && position < count) {
        view.line = wording::Tongue::tr("Line %1: %2")
                        .arg(chosen + 1)
                        .arg(endsOf(trip->lines[position], *frame));
    }
    return view;
}

} // namespace days::survey_day
