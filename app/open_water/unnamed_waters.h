// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/water_store.h"

#include <QString>
#include <QStringList>

#include <memory>

namespace open_water {

/// The folder in which waters live that nobody has named yet: each in a file of its own, from the
/// first thing brought in or typed.
class UnnamedWaters {
public:
    explicit UnnamedWaters(QString folder) : folder_(std::move(folder)) {}

    /// A file for one more, and the folder where it is missing. May run on any thread.
    /// \return unwritableOutput where the folder is closed to us.
    [[nodiscard]] base::Result<std::unique_ptr<store::WaterStore>> make() const;
    /// Whether the file lies there.
    [[nodiscard]] bool holds(const QString& path) const;
    /// All of them, the one changed last first.
    [[nodiscard]] QStringList files() const;
    /// Takes the file of a water away that lives in another place by now.
    static void remove(const QString& path);

private:
    QString folder_;
};

} // namespace open_water
