// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/mid_sentence.h"

#include "app/wording/tongue.h"

namespace wording {

QString midSentence(const QString& label) {
    return Tongue::spoken() == QLatin1String("en") ? label.toLower() : label;
}

} // namespace wording
