// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace wording {

/// A label as it stands within a sentence: small in English, as it is in a language that tells
/// nouns by their capitals.
[[nodiscard]] QString midSentence(const QString& label);

} // namespace wording
