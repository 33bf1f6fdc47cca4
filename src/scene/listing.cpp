#include "scene/listing.hpp"

#include "scene/for_sale.hpp"
#include "scene/phone.hpp"

namespace tinworm::scene {
namespace {

DiagramOptions drawn_for_sale(const ListingOptions& options) {
  DiagramOptions drawn;
  drawn.paper = options.paper;
  drawn.signed_name = options.signed_name;
  drawn.units = options.units;
  drawn.sheets = options.sheets;
  drawn.for_sale = true;
  return drawn;
}

}  // namespace

std::vector<Page> listing(const weighing::Result& result, const ListingOptions& options,
                          const Measure& measure) {
  return diagram(for_sale(result, options.signed_name), drawn_for_sale(options), measure);
}

std::optional<Page> listing_phone(const weighing::Result& result, SheetKind kind,
                                  const ListingOptions& options, const Measure& measure) {
  return phone_page(for_sale(result, options.signed_name), kind, drawn_for_sale(options), measure);
}

}  // namespace tinworm::scene
