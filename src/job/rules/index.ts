export * from "../../rules";
