// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/survey_words.h"

#include "app/wording/tongue.h"

#include <QStringList>

namespace wording {

QString daysDiffer(units::Length by, const Words& words) {
    return Tongue::tr("Two survey days differ by %1 where they cross: agree the offset under "
                      "Check the soundings.")
        .arg(words.fineDepth(units::Depth::fromLength(by)));
}

QString daysWithoutLevel(std::size_t days) {
    return Tongue::counted("The water level of %n survey days is not known: their depths may "
                           "stand too high or too low.",
                           "The water level of %n survey day is not known: its depths may "
                           "stand too high or too low.",
                           days);
}

QString agreementDropped(const soundings::SurveyDay& before, const soundings::SurveyDay& after,
                         const Words& words) {
    QStringList parts;
    if (before.agreedOffset && !after.agreedOffset) {
        parts += Tongue::tr("offset of %1").arg(words.levelChange(*before.agreedOffset));
    }
    if (before.agreedDelay_s && !after.agreedDelay_s) {
        parts += Tongue::tr("delay of %1 s").arg(Tongue::number(*before.agreedDelay_s, 1));
    }
    return parts.isEmpty()
               ? QString()
               : Tongue::tr("%1: the level is another now, so the %2 agreed before no longer "
                            "counts; see Check the soundings.")
                     .arg(QString::fromStdString(before.name), parts.join(Tongue::tr(" and the ")));
}

} // namespace wording
