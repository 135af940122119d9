// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/section_words.h"

#include "app/wording/tongue.h"

#include <QRegularExpression>

#include <array>

namespace wording {

QString sectionName(const water::SectionNameProposal& proposal) {
    const std::array ways{Tongue::tr("north"), Tongue::tr("north-east"),
                          Tongue::tr("east"),  Tongue::tr("south-east"),
                          Tongue::tr("south"), Tongue::tr("south-west"),
                          Tongue::tr("west"),  Tongue::tr("north-west")};
    const QString place = QString::fromStdString(proposal.place);
    return proposal.towards
               ? QStringLiteral("%1 %2").arg(
                     place, ways.at(static_cast<std::size_t>(water::eighthOf(*proposal.towards))))
               : place;
}

QString nameCalled(const std::string& name) {
    static const QRegularExpression numbered(QStringLiteral("\\A(Section|mark) (\\d+)\\z"));
    QString text = QString::fromStdString(name);
    const auto match = numbered.match(text);
    if (!match.hasMatch()) {
        return text;
    }
    return (match.captured(1) == QLatin1String("mark") ? Tongue::tr("mark %1")
                                                       : Tongue::tr("Section %1"))
        .arg(match.captured(2));
}

} // namespace wording
