#include "verbs/schema.hpp"

#include "output/weigh_json.hpp"
#include "schema/body_schema.hpp"
#include "schema/rules_schema.hpp"
#include "schema/survey_schema.hpp"

namespace tinworm::verbs {
namespace {

schema::Json schema_of(Described file) {
  switch (file) {
    case Described::survey:
      return schema::survey_schema();
    case Described::body:
      return schema::body_schema();
    case Described::rules:
      return schema::rules_schema();
  }
  return {};
}

}  // namespace

ExitStatus run(const SchemaOptions& options, const Streams& streams) {
  streams.print(output::json_text(schema_of(options.of), output::Lines::many));
  return done;
}

}  // namespace tinworm::verbs
