// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/kept_words.h"

#include "app/wording/tongue.h"

#include <QCoreApplication>
#include <QStringList>

namespace window {

using water::Part;

namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("window", words);
}

QString nameOf(Part part) {
    switch (part) {
    case Part::facts:
        return tr("facts and settings");
    case Part::shoreline:
        return tr("shoreline");
    case Part::days:
        return tr("survey days");
    case Part::leadLine:
        return tr("lead line");
    case Part::weedNotes:
        return tr("weed notes");
    case Part::houseRules:
        return tr("house rules");
    case Part::sections:
        return tr("sections");
    case Part::numbering:
        return tr("numbers of the sections");
    case Part::plan:
        return tr("plan");
    case Part::sheets:
        return tr("sheets for the boat");
    case Part::log:
        return tr("log");
    }
    return {};
}

} // namespace

QString partsInWords(const std::set<Part>& parts) {
    if (parts.size() == water::allParts.size()) {
        return tr("the whole water");
    }
    QStringList names;
    for (const Part part : parts) {
        names.append(nameOf(part));
    }
    return names.join(QStringLiteral(", "));
}

QString notKeptWords(const std::set<Part>& parts, const std::optional<base::Error>& whyNot,
                     bool isTriedAgain) {
    if (parts.empty() || !whyNot) {
        return {};
    }
    const QString words =
        tr("Not kept yet: %1. %2.").arg(partsInWords(parts), wording::Tongue::sentence(*whyNot));
    return isTriedAgain ? words + QLatin1Char(' ') + tr("It is tried again every few seconds.")
                        : words;
}

} // namespace window
