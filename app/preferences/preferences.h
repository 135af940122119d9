// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/preferences/theme.h"
#include "app/preferences/unit_system.h"

#include <QByteArray>
#include <QObject>
#include <QString>
#include <QStringList>

#include <vector>

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

    [[nodiscard]] Theme theme() const { return theme_; }
    void setTheme(Theme theme);
    /// Size of all letters on the screen, of usual ones: 1. One of typeScales().
    [[nodiscard]] double typeScale() const { return typeScale_; }
    /// The next one of typeScales(); stays at the ends.
    void makeTypeLarger();
    void makeTypeSmaller();
    void makeTypeNormal();
    [[nodiscard]] static const std::vector<double>& typeScales();

    /// The language that was asked for, by its code ("de"); empty: that of the machine. Taken up at
    /// the next start.
    [[nodiscard]] static QString language();
    static void setLanguage(const QString& code);

    /// How a part of the window was left: its name, and what the part itself understands.
    [[nodiscard]] static QByteArray stateOf(const QString& part);
    static void keepState(const QString& part, const QByteArray& state);

    /// The folder of the last file of this kind; empty where there is none, or it is gone.
    [[nodiscard]] static QString folderOf(FileKind kind);
    /// \param file that was chosen, or a folder.
    static void keepFolderOf(FileKind kind, const QString& file);

    /// How strongly a layer of the chart is drawn: one of strengths(); 1 where nobody chose.
    [[nodiscard]] static double strengthOf(const QString& layer);
    static void keepStrength(const QString& layer, double strength);
    [[nodiscard]] static const std::vector<double>& strengths();

    /// Whether a hint for the first days has been put away.
    [[nodiscard]] static bool isPutAway(const QString& hint);
    void putAway(const QString& hint);
    void bringHintsBack();

    /// Water files opened lately, newest first, at most eight, only those that are still there.
    [[nodiscard]] QStringList recentWaters() const;
    void addRecentWater(const QString& path) const;

    /// The backdrop of the water in this file.
    [[nodiscard]] static BackdropChoice backdropOf(const QString& waterPath);
    static void setBackdrop(const QString& waterPath, const BackdropChoice& choice);

signals:
    void unitsChanged();
    void lookChanged(); ///< Theme or size of type.
    void hintsChanged();

private:
    void setTypeScale(double scale);

    UnitSystem units_ = UnitSystem::metric;
    Theme theme_ = Theme::light;
    double typeScale_ = 1.0;
};

} // namespace preferences
