// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/one_line.h"

#include "core/base/harmless_text.h"

namespace wording {

QString oneLine(const std::string& name, int most) {
    const QString line = QString::fromStdString(base::harmless(name)).simplified();
    return line.size() <= most ? line : line.first(most - 1).trimmed() + QStringLiteral("\u2026");
}

QString oneLine(const QString& name, int most) {
    return oneLine(name.toStdString(), most);
}

} // namespace wording
