// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/preferences/unit_system.h"

#include <QObject>
#include <QString>
#include <QStringList>

namespace preferences {

/// What lies under the chart of one water.
struct BackdropChoice {
    QString path; ///< Empty: nothing.
    double strength = 0.5;
    bool isShown = true;
};

/// What belongs to the user and not to a water; kept between runs by QSettings.
class Preferences : public QObject {
    Q_OBJECT
public:
    explicit Preferences(QObject* parent = nullptr);

    [[nodiscard]] UnitSystem units() const { return units_; }
    void setUnits(UnitSystem units);

    /// Water files opened lately, newest first, at most eight, only those that are still there.
    [[nodiscard]] QStringList recentWaters() const;
    void addRecentWater(const QString& path);

    /// The backdrop of the water in this file.
    [[nodiscard]] static BackdropChoice backdropOf(const QString& waterPath);
    static void setBackdrop(const QString& waterPath, const BackdropChoice& choice);

signals:
    void unitsChanged();

private:
    UnitSystem units_ = UnitSystem::metric;
};

} // namespace preferences
