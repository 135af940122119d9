// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/error.h"

#include <QCoreApplication>
#include <QLocale>
#include <QString>
#include <QStringList>

#include <concepts>
#include <string>

namespace wording {

/// The language in which the program speaks: English, which stands in the sources, until another is
/// chosen. meremark-batch never chooses one, so that what scripts read is the same everywhere.
///
/// Chosen once, before the first window and before any thread; then read by all.
class Tongue {
    Q_DECLARE_TR_FUNCTIONS(wording)

public:
    /// Languages that are shipped, as codes of ISO 639-1: "en" first.
    [[nodiscard]] static QStringList shipped();
    /// What a language calls itself: "Deutsch".
    [[nodiscard]] static QString ownName(const QString& code);
    /// The shipped language that suits somebody who has asked for `wanted` ("" where nothing was
    /// asked for) on a machine whose own languages are `system`, best first: "de-AT", "en".
    [[nodiscard]] static QString best(const QString& wanted, const QStringList& system);

    /// From now on the program speaks this language; English where it is not shipped.
    static void speak(const QString& code);
    [[nodiscard]] static QString spoken(); ///< "en", "de"

    /// How numbers and dates are written: by the language and not by the machine, so that a
    /// sentence is of one piece.
    [[nodiscard]] static const QLocale& locale();
    /// With just so many decimals: "5.4", "5,4". No sign of minus is left before a zero.
    [[nodiscard]] static QString number(double value, int decimals);
    /// With at most so many, none of them a zero at the end: "4", "4.5".
    [[nodiscard]] static QString shortNumber(double value, int most);
    /// With marks between thousands: "41,208", "41.208".
    [[nodiscard]] static QString whole(qint64 value);

    /// A sentence with a count in it, which stands as %n. English has the two forms that are given;
    /// other languages as many as theirs need.
    template <std::integral Count>
    [[nodiscard]] static QString counted(const char* many, const char* one, Count n) {
        return countedWhole(many, one, static_cast<qint64>(n));
    }

    /// What core says, in the language of the desk: a whole sentence of it, or a phrase.
    [[nodiscard]] static QString ofCore(const std::string& said);
    /// base::Error::sentence(), in the language of the desk.
    [[nodiscard]] static QString sentence(const base::Error& error);

private:
    [[nodiscard]] static QString countedWhole(const char* many, const char* one, qint64 n);
};

} // namespace wording
