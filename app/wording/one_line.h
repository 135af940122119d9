// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <string>

namespace wording {

/// A name as it can stand in a line among others, whoever gave it: harmless (base::harmless),
/// without breaks, and cut at `most` letters with an ellipsis.
[[nodiscard]] QString oneLine(const QString& name, int most = 80);
[[nodiscard]] QString oneLine(const std::string& name, int most = 80);

} // namespace wording
