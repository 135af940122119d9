// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/reworded.h"

#include <QRegularExpression>

namespace wording {

namespace {

QString converted(const QString& number, double perUnit) {
    if (number.isEmpty()) {
        return {};
    }
    const int decimals = number.contains('.') ? 1 : 0;
    return QString::number(number.toDouble() * perUnit, 'f', decimals);
}

} // namespace

QString reworded(std::string_view sentence, const Words& words) {
    QString text = QString::fromUtf8(sentence.data(), static_cast<qsizetype>(sentence.size()));
    if (words.isMetric()) {
        return text;
    }
    static const QRegularExpression amount(QStringLiteral(
        R"((?:(\d+(?:\.\d+)?)( m)?( to | and |-| x ))?(\d+(?:\.\d+)?) m(/s)?(?![\w/²³]))"));
    const double feet = units::Length::metres(1.0).inFeet();
    const double milesPerHour = units::Speed::metresPerSecond(1.0).inMilesPerHour();
    QString out;
    qsizetype done = 0;
    auto matches = amount.globalMatch(text);
    while (matches.hasNext()) {
        const QRegularExpressionMatch match = matches.next();
        const bool isSpeed = !match.captured(5).isEmpty();
        const double perUnit = isSpeed ? milesPerHour : feet;
        const QString unit = isSpeed ? words.speedUnit() : words.depthUnit();
        out += text.mid(done, match.capturedStart() - done);
        out += converted(match.captured(1), perUnit);
        if (!match.captured(2).isEmpty()) {
            out += ' ' + unit;
        }
        out += match.captured(3) + converted(match.captured(4), perUnit) + ' ' + unit;
        done = match.capturedEnd();
    }
    return out + text.mid(done);
}

} // namespace wording
