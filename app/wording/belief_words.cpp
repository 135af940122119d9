// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/belief_words.h"

#include "app/wording/tongue.h"

#include <cmath>

namespace wording {

namespace {

using marks::BeliefRecord;
using marks::FactorKind;

QString times(double factor) {
    return QStringLiteral("×") + Tongue::number(factor, 2);
}

/// "You count it more than usual, ×1.11".
QString saidByUser(const BeliefRecord& record) {
    constexpr double asUsual = 0.005; // what is shown with two decimals as the same is the same
    const double usual = marks::Weights().of(record.kind);
    QString words = Tongue::tr("You count it less than usual");
    if (std::fabs(record.said - usual) < asUsual) {
        words = Tongue::tr("You count it as usual");
    } else if (record.said < asUsual) {
        words = Tongue::tr("You do not count it");
    } else if (record.said > usual) {
        words = Tongue::tr("You count it more than usual");
    }
    return std::fabs(record.saidTimes - 1.0) < asUsual
               ? words
               : words + QStringLiteral(", ") + times(record.saidTimes);
}

QString saidByLog(const BeliefRecord::LogSays& log) {
    const QString how = log.low > 1.0    ? Tongue::tr("speaks for it")
                        : log.high < 1.0 ? Tongue::tr("speaks against it")
                                         : Tongue::tr("cannot tell yet");
    return Tongue::tr("your log %1: %2, with 80 % between %3 and %4")
        .arg(how, times(log.times), times(log.low), times(log.high));
}

/// Why no log can say anything of it.
QString neverAsked(FactorKind kind) {
    switch (kind) {
    case FactorKind::depth:
        return Tongue::tr("your log learns depths by itself, range by range");
    case FactorKind::shelter:
        return Tongue::tr("your log keeps the wind, but no waves");
    case FactorKind::record:
        return Tongue::tr("it says how far your log is believed");
    case FactorKind::lessTried:
        return Tongue::tr("it says how much you want to find out");
    default:
        return Tongue::tr("no fish can speak for it: it is of the chart");
    }
}

} // namespace

QString said(const BeliefRecord& record, bool hasLog) {
    QString log;
    if (!record.isAskedOfLog) {
        log = neverAsked(record.kind);
    } else if (!hasLog) {
        log = Tongue::tr("nothing caught yet: by your belief alone");
    } else if (record.log) {
        log = saidByLog(*record.log);
    } else if (record.kind == FactorKind::windward) {
        log = Tongue::tr("no stay of your log tells the wind");
    } else {
        log = Tongue::tr("no stay of your log was near any");
    }
    return QStringLiteral("%1; %2.").arg(saidByUser(record), log);
}

} // namespace wording
