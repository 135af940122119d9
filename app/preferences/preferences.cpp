// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/preferences/preferences.h"

#include <QFileInfo>
#include <QSettings>

#include <algorithm>

namespace preferences {

namespace {

constexpr auto unitsKey = "units";
constexpr auto recentKey = "recentWaters";
constexpr qsizetype mostRecent = 8;

/// A settings key for a water's file; its slashes would mean groups.
QString backdropKey(const QString& waterPath) {
    return QStringLiteral("backdrops/") +
           QString::fromLatin1(waterPath.toUtf8().toBase64(QByteArray::Base64UrlEncoding));
}

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

BackdropChoice Preferences::backdropOf(const QString& waterPath) {
    const QStringList kept = QSettings().value(backdropKey(waterPath)).toStringList();
    BackdropChoice choice;
    if (kept.size() == 3 && QFileInfo::exists(kept[0])) {
        choice.path = kept[0];
        choice.strength = std::clamp(kept[1].toDouble(), 0.0, 1.0);
        choice.isShown = kept[2] == QLatin1String("shown");
    }
    return choice;
}

void Preferences::setBackdrop(const QString& waterPath, const BackdropChoice& choice) {
    if (choice.path.isEmpty()) {
        QSettings().remove(backdropKey(waterPath));
        return;
    }
    QSettings().setValue(
        backdropKey(waterPath),
        QStringList{choice.path, QString::number(choice.strength),
                    choice.isShown ? QStringLiteral("shown") : QStringLiteral("hidden")});
}

} // namespace preferences
