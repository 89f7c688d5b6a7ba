// What a computed field is calls the worksheet functions, which a host loads first.
import "../../functions";
