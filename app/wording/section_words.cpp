// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/section_words.h"

#include <array>

namespace wording {

QString sectionName(const water::SectionNameProposal& proposal) {
    static const std::array ways{QStringLiteral("north"), QStringLiteral("north-east"),
                                 QStringLiteral("east"),  QStringLiteral("south-east"),
                                 QStringLiteral("south"), QStringLiteral("south-west"),
                                 QStringLiteral("west"),  QStringLiteral("north-west")};
    const QString place = QString::fromStdString(proposal.place);
    return proposal.towards
               ? QStringLiteral("%1 %2").arg(
                     place, ways.at(static_cast<std::size_t>(water::eighthOf(*proposal.towards))))
               : place;
}

} // namespace wording
