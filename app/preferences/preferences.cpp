// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/preferences/preferences.h"

#include <QFileInfo>
#include <QSettings>

#include <algorithm>
#include <array>

namespace preferences {

namespace {

constexpr auto unitsKey = "units";
constexpr auto themeKey = "theme";
constexpr auto typeKey = "typeScale";
constexpr auto languageKey = "language";
constexpr auto hintsKey = "hintsPutAway";
constexpr auto recentKey = "recentWaters";
constexpr qsizetype mostRecent = 8;

constexpr std::array<const char*, allThemes.size()> themeNames{"light", "dark", "highContrast"};
constexpr std::array<const char*, 6> kindNames{"water", "survey",  "log",
                                               "track", "picture", "output"};

QString folderKey(FileKind kind) {
    return QStringLiteral("folders/") + QLatin1String(kindNames.at(static_cast<std::size_t>(kind)));
}

QString strengthKey(const QString& layer) {
    return QStringLiteral("strengths/") + layer;
}

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
    const QString theme = QSettings().value(themeKey).toString();
    for (const Theme each : allThemes) {
        if (theme == QLatin1String(themeNames.at(static_cast<std::size_t>(each)))) {
            theme_ = each;
        }
    }
    const double kept = QSettings().value(typeKey, 1.0).toDouble();
    if (std::ranges::find(typeScales(), kept) != typeScales().end()) {
        typeScale_ = kept;
    }
}

void Preferences::setTheme(Theme theme) {
    if (theme == theme_) {
        return;
    }
    theme_ = theme;
    QSettings().setValue(themeKey, themeNames.at(static_cast<std::size_t>(theme)));
    emit lookChanged();
}

const std::vector<double>& Preferences::typeScales() {
    static const std::vector<double> scales{0.9, 1.0, 1.15, 1.3, 1.5};
    return scales;
}

void Preferences::setTypeScale(double scale) {
    if (scale == typeScale_) {
        return;
    }
    typeScale_ = scale;
    QSettings().setValue(typeKey, scale);
    emit lookChanged();
}

void Preferences::makeTypeLarger() {
    const auto next = std::ranges::upper_bound(typeScales(), typeScale_);
    setTypeScale(next == typeScales().end() ? typeScale_ : *next);
}

void Preferences::makeTypeSmaller() {
    const auto now = std::ranges::lower_bound(typeScales(), typeScale_);
    setTypeScale(now == typeScales().begin() ? typeScale_ : *(now - 1));
}

void Preferences::makeTypeNormal() {
    setTypeScale(1.0);
}

QString Preferences::language() {
    return QSettings().value(languageKey).toString();
}

void Preferences::setLanguage(const QString& code) {
    QSettings().setValue(languageKey, code);
}

QByteArray Preferences::stateOf(const QString& part) {
    return QSettings().value(QStringLiteral("window/") + part).toByteArray();
}

void Preferences::keepState(const QString& part, const QByteArray& state) {
    QSettings().setValue(QStringLiteral("window/") + part, state);
}

QString Preferences::folderOf(FileKind kind) {
    const QString kept = QSettings().value(folderKey(kind)).toString();
    return QFileInfo(kept).isDir() ? kept : QString();
}

void Preferences::keepFolderOf(FileKind kind, const QString& file) {
    const QFileInfo about(file);
    QSettings().setValue(folderKey(kind),
                         about.isDir() ? about.absoluteFilePath() : about.absolutePath());
}

const std::vector<double>& Preferences::strengths() {
    static const std::vector<double> strengths{1.0, 0.7, 0.4};
    return strengths;
}

double Preferences::strengthOf(const QString& layer) {
    const double kept = QSettings().value(strengthKey(layer), 1.0).toDouble();
    return std::ranges::find(strengths(), kept) != strengths().end() ? kept : 1.0;
}

void Preferences::keepStrength(const QString& layer, double strength) {
    QSettings().setValue(strengthKey(layer), strength);
}

bool Preferences::isPutAway(const QString& hint) {
    return QSettings().value(hintsKey).toStringList().contains(hint);
}

void Preferences::putAway(const QString& hint) {
    QStringList away = QSettings().value(hintsKey).toStringList();
    if (!away.contains(hint)) {
        QSettings().setValue(hintsKey, away << hint);
        emit hintsChanged();
    }
}

void Preferences::bringHintsBack() {
    QSettings().remove(hintsKey);
    emit hintsChanged();
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

void Preferences::addRecentWater(const QString& path) const {
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
