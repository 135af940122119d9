// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/preferences/preferences.h"

#include <QFileInfo>
#include <QSettings>

namespace preferences {

namespace {

constexpr auto unitsKey = "units";
constexpr auto recentKey = "recentWaters";
constexpr qsizetype mostRecent = 8;

} // namespace

Preferences::Preferences(QObject* parent) : QObject(parent) {
    if (QSettings().value(unitsKey).toString() == QLatin1String("imperial")) {
        units_ = UnitSystem::imperial;
    }
}

void Preferences::setUnits(UnitSystem units) {
    if (units == units_) {
        return;
    }
    units_ = units;
    QSettings().setValue(unitsKey, units == UnitSystem::imperial ? "imperial" : "metric");
    emit unitsChanged();
}

QStringList Preferences::recentWaters() const {
    QStringList there;
    for (const QString& path : QSettings().value(recentKey).toStringList()) {
        if (QFileInfo::exists(path)) {
            there.append(path);
        }
    }
    return there;
}

void Preferences::addRecentWater(const QString& path) {
    QStringList recent = recentWaters();
    recent.removeAll(path);
    recent.prepend(path);
    while (recent.size() > mostRecent) {
        recent.removeLast();
    }
    QSettings().setValue(recentKey, recent);
}

} // namespace preferences
