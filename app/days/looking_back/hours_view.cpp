// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/hours_view.h"

#include "app/wording/tongue.h"

#include <cmath>

namespace days::looking_back {

namespace {

QString clockWords(double hour) {
    const auto minutes = std::lround(hour * 60.0);
    return QStringLiteral("%1:%2")
        .arg(minutes / 60, 2, 10, QLatin1Char('0'))
        .arg(minutes % 60, 2, 10, QLatin1Char('0'));
}

QString spanWords(const rates::HourSpan& span) {
    const QString from = clockWords(span.from);
    const QString to = clockWords(span.to);
    return from == to ? from : wording::Tongue::tr("%1 to %2").arg(from, to);
}

} // namespace

QString lightWords(const water::FishedLight& light) {
    return wording::Tongue::tr("Sunrise %1, sunset %2 on the days fished.")
        .arg(spanWords(light.sunrise), spanWords(light.sunset));
}

QString hoursTable(const rates::HourRates& hours) {
    QString text = QStringLiteral("hour,rod_hours,rate_per_10_rod_hours,rate_low,rate_high\r\n");
    for (const rates::HourRate& point : hours.points) {
        text += QStringLiteral("%1,%2,").arg(point.hour, 0, 'f', 2).arg(point.rodHours, 0, 'f', 3);
        text += point.rate ? QStringLiteral("%1,%2,%3")
                                 .arg(point.rate->per10RodHours, 0, 'f', 4)
                                 .arg(point.rate->low, 0, 'f', 4)
                                 .arg(point.rate->high, 0, 'f', 4)
                           : QStringLiteral(",,");
        text += QStringLiteral("\r\n");
    }
    return text;
}

} // namespace days::looking_back
